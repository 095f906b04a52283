package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/** Says what the figures of one layout are, or why it is not possible: a line that a recommendation rests on. */
final class LayoutFigures {

    private LayoutFigures() {}

    static Sentence of(LaidOut layout) {
        return layout.answer().isPresent() ? figures(layout) : absent(layout);
    }

    private static Sentence absent(LaidOut layout) {
        return Sentence.of("{0}: not possible here. {1}", layout.calledFirst(), layout.saying());
    }

    private static Sentence figures(LaidOut layout) {
        List<Sentence> parts = new ArrayList<>();
        OptionalDouble ratio = layout.leastRatio();
        if (ratio.isPresent()) {
            parts.add(Sentence.of(
                    "the weakest point is {0} to hold {1} times its hardest steady pull",
                    Sentence.word(layout.believed()), Figures.times(ratio.getAsDouble())));
        }
        parts.add(Sentence.of(
                "hardest pull on a point {0} kN, friction allowed for", Figures.fixed(layout.hardestPull(), 2)));
        if (layout.holdsEveryLoss()) {
            parts.addAll(afterLoss(layout));
        } else {
            parts.add(Sentence.of("the loss of a point loses everything"));
        }
        return Sentence.of("{0}: {1}.", layout.calledFirst(), Sentence.joined("; ", parts));
    }

    private static List<Sentence> afterLoss(LaidOut layout) {
        List<Sentence> parts = new ArrayList<>();
        String drop = Figures.metres(layout.farthestDrop());
        parts.add(
                layout.farthestFall() > CheckExtension.FALL_METRES
                        ? Sentence.of(
                                "drop when a point goes up to {0}, {1} of it in free fall",
                                drop, Figures.metres(layout.farthestFall()))
                        : Sentence.of("drop when a point goes up to {0}", drop));
        if (!layout.holdsEveryCut()) {
            parts.add(Sentence.of("one cut of a strand loses everything"));
        }
        if (layout.knownTooWeak()) {
            parts.add(Sentence.of("too weak for the model peak after a loss"));
        }
        return parts;
    }
}
