package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.KnotPlace;
import thalweg.rig.Limiters;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.rig.RigSector;
import thalweg.rig.RigSetup;
import thalweg.rig.RigState;
import thalweg.rig.Sliding;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** How the strands of a rig are laid, in words, the same on sheets, on the screen and in the terminal. */
public final class LaidWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public LaidWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** The layout, with what the kind alone does not say: where limiter knots are. */
    public String layout(RigInput input) {
        String kind = phrases.say("rig.kind." + input.rig().kind().word());
        return input.rig()
                .limiters()
                .map(limiters -> phrases.say("rig.layout.limited", kind, knots(input, limiters)))
                .orElse(kind);
    }

    /** The layout with its material. */
    public String sentence(RigInput input) {
        RigSetup rig = input.rig();
        String layout = layout(input);
        String stiffness = rig.stiffness().print(units);
        return switch (rig.kind()) {
            case SINGLE, FOCUSED -> phrases.say("rig.laid", layout, rig.strands(), stiffness);
            case LOOP -> phrases.say("rig.laid.loop", layout, stiffness);
            case SLIDING -> {
                Sliding sliding = rig.sliding().orElseThrow();
                String captured = phrases.say(sliding.captured() ? "rig.captured.yes" : "rig.captured.no");
                yield phrases.say("rig.laid.sliding", layout, captured, stiffness, sliding.friction());
            }
            case LIMITED -> {
                Limiters limiters = rig.limiters().orElseThrow();
                yield phrases.say(
                        "rig.laid.limited",
                        layout,
                        rig.strands(),
                        limiters.sliderStrands(),
                        stiffness,
                        limiters.friction());
            }
        };
    }

    private String knots(RigInput input, Limiters limiters) {
        String stated = phrases.say(
                "rig.limits",
                limiters.fromFocus().get(0).printFine(units),
                input.points().get(0).name(),
                limiters.fromFocus().get(1).printFine(units),
                input.points().get(1).name());
        return limiters.range()
                .map(range -> phrases.say(
                        "rig.limits.found",
                        stated,
                        range.from().print(),
                        range.to().print()))
                .orElse(stated);
    }

    /** Whether the master of a limited rig is free to slide, at the aim and over the sway; empty for other rigs. */
    public Optional<String> freedom(RigAnswer answer) {
        if (answer.limits().isEmpty()) {
            return Optional.empty();
        }
        List<String> against = answer.steady().knots().stream()
                .filter(KnotPlace::againstMaster)
                .map(KnotPlace::point)
                .toList();
        String atAim = against.isEmpty()
                ? phrases.say("rig.knots.off")
                : phrases.say("rig.knots.against", against.stream().collect(Collectors.joining(", ")));
        long free =
                answer.sector().directions().stream().filter(LaidWords::isFree).count();
        return Optional.of(
                answer.input().load().sway().degrees() > 0
                        ? atAim + " " + phrases.say("rig.knots.sway", free, RigSector.DIRECTIONS)
                        : atAim);
    }

    private static boolean isFree(RigState state) {
        return state.knots().stream().noneMatch(KnotPlace::againstMaster);
    }
}
