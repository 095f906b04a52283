package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * Judges the letter R of the checklist: whether the master stays held when any one point lets go or any one strand is
 * cut, and whether what is left is strong enough for that.
 *
 * <p>The figure is how many of these single failures are held, as part of all. One that loses everything decides; and
 * since uneven tying, a slipping knot or a bounce can give up to three times the model peak, only a strength of three
 * times the peak is called good. That line is our choice.
 */
final class CheckRedundant {

    /** Strength over model peak from which on it is called good [-]; our choice. */
    static final double GOOD = 3;

    private CheckRedundant() {}

    static LetterCheck of(List<PointLoss> losses, List<StrandCut> cuts) {
        List<Sentence> fatal = new ArrayList<>();
        losses.stream()
                .filter(loss -> !loss.held())
                .forEach(loss -> fatal.add(Sentence.of("the loss of {0}", loss.point())));
        cuts.stream()
                .filter(cut -> !cut.held())
                .forEach(cut -> fatal.add(Sentence.of("a cut of the {0}", StrandNames.said(cut.strand()))));
        int all = losses.size() + cuts.size();
        int held = all - fatal.size();
        double part = (double) held / all;
        if (fatal.isEmpty()) {
            return judged(losses, cuts);
        }
        Sentence lost = Sentence.of("One failure loses everything: {0}.", listed(fatal));
        return check(
                RigVerdict.POOR,
                part,
                held == 0 ? lost : Sentence.of("{0} Held: {1} of {2} single failures.", lost, held, all));
    }

    private static LetterCheck judged(List<PointLoss> losses, List<StrandCut> cuts) {
        boolean onlyLegs = cuts.stream().allMatch(cut -> cut.asLossOf().isPresent());
        Sentence all = onlyLegs
                ? Sentence.of("The loss of any one point and the cut of any one leg is held.")
                : Sentence.of("The loss of any one point and the cut of any one strand is held.");
        Optional<PointLoss> over = first(losses, Optional.of(false));
        if (over.isPresent()) {
            return check(RigVerdict.POOR, 1, Sentence.of("{0} {1}", all, when(over.get())));
        }
        Optional<PointLoss> unknown = first(losses, Optional.empty());
        if (unknown.isPresent()) {
            return check(RigVerdict.UNKNOWN, 1, Sentence.of("{0} Strong enough? {1}", all, when(unknown.get())));
        }
        double least = losses.stream()
                .mapToDouble(loss -> within(loss).ratio().orElseThrow())
                .min()
                .orElseThrow();
        Sentence margin = Sentence.of(
                "What is left is {0} times as strong as the model peak, or more; uneven tying, slip or a bounce can give"
                        + " two to three times that peak, so our own line asks for {1} times.",
                Figures.times(least), Figures.fixed(GOOD, 0));
        return check(least >= GOOD ? RigVerdict.GOOD : RigVerdict.WATCH, 1, Sentence.of("{0} {1}", all, margin));
    }

    private static Optional<PointLoss> first(List<PointLoss> losses, Optional<Boolean> verdict) {
        return losses.stream()
                .filter(loss -> within(loss).verdict().equals(verdict))
                .findFirst();
    }

    private static WithinStrength within(PointLoss loss) {
        return loss.aftermath().orElseThrow().within();
    }

    private static Sentence when(PointLoss loss) {
        return Sentence.of("When {0} goes: {1}", loss.point(), within(loss).saying());
    }

    private static Sentence listed(List<Sentence> items) {
        int last = items.size() - 1;
        return last == 0
                ? items.get(0)
                : Sentence.of("{0} or {1}", Sentence.joined(", ", items.subList(0, last)), items.get(last));
    }

    private static LetterCheck check(RigVerdict verdict, double part, Sentence why) {
        return new LetterCheck(CheckLetter.R, verdict, OptionalDouble.of(part), why);
    }
}
