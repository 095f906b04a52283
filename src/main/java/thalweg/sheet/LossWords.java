package thalweg.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.FrictionRange;
import thalweg.rig.PeakForces;
import thalweg.rig.PeakRange;
import thalweg.rig.StrandCut;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Peaks, cuts and what friction may leave, in words, the same on the screen, in the terminal and in explanations. */
public final class LossWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public LossWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /**
     * The peaks after one loss, each with the range in which it lies.
     *
     * @param otherwise the key of what is said of a peak whose range has not been worked out
     */
    public String peaks(PeakForces peaks, Optional<PeakRange.Loss> range, String otherwise) {
        String list = peaks.points().stream()
                .map(peak -> range.flatMap(known -> known.on(peak.point()))
                        .map(known -> peak(known, peak.force().print(units)))
                        .orElseGet(() -> phrases.say(
                                otherwise, peak.point(), peak.force().print(units))))
                .collect(Collectors.joining(", "));
        return peaks.rising() ? phrases.say("rig.loss.rising", list) : list;
    }

    /** The ranges after one loss, each with its nominal peak as far as that is known. */
    public String ranges(PeakRange.Loss loss) {
        return loss.points().stream()
                .map(point -> peak(
                        point, point.nominal().map(force -> force.print(units)).orElse(phrases.say("unknown"))))
                .collect(Collectors.joining(", "));
    }

    private String peak(PeakRange.OnPoint point, String nominal) {
        return phrases.say(
                "rig.peaks.point",
                point.point(),
                nominal,
                point.low().print(units),
                point.high().print(units));
    }

    /** What the cut of a strand does. */
    public String cut(StrandCut cut) {
        if (!cut.held()) {
            return phrases.say("rig.cut.lost", cut.called());
        }
        return cut.asLossOf()
                .map(point -> phrases.say("rig.cut.held", cut.called(), point))
                .orElseGet(() -> phrases.say("rig.cut.beside", cut.called()));
    }

    /** Between which shares friction may leave the points, or why that is unknown. */
    public String friction(FrictionRange friction) {
        return friction.known() ? phrases.say("rig.range", shares(friction)) : phrases.say(friction.saying());
    }

    /** Those shares alone. */
    public String shares(FrictionRange friction) {
        return friction.shares().stream()
                .map(range ->
                        phrases.say("rig.range.point", range.point(), percent(range.least()), percent(range.most())))
                .collect(Collectors.joining(", "));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", share * 100);
    }
}
