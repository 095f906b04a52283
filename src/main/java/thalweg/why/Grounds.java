package thalweg.why;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.rig.Limiters;
import thalweg.rig.RigInput;
import thalweg.rig.RigLoad;
import thalweg.rig.RigPoint;
import thalweg.rig.RigSetup;
import thalweg.units.Length;
import thalweg.why.Ground.Kind;
import thalweg.why.Ground.Standing;

/** Everything that was put into a rig, as far as its layout has it, and what of it a figure rests on. */
final class Grounds {

    private static final Set<Kind> AT_REST = EnumSet.of(
            Kind.LOAD,
            Kind.AIM,
            Kind.LEAN,
            Kind.REDIRECT,
            Kind.PLACES,
            Kind.SLINGS,
            Kind.LAYOUT,
            Kind.FOCUS,
            Kind.STIFFNESS,
            Kind.STRANDS,
            Kind.SLACK,
            Kind.LIMITS,
            Kind.SLIDER);

    private static final Set<Kind> LAID = EnumSet.of(
            Kind.PLACES, Kind.SLINGS, Kind.LAYOUT, Kind.FOCUS, Kind.STRANDS, Kind.SLACK, Kind.LIMITS, Kind.SLIDER);

    private final Map<Kind, Ground> all = new EnumMap<>(Kind.class);
    private final Words words;
    private final Set<Kind> starts;
    private final List<String> assumed;

    Grounds(RigInput input, Set<Kind> starts, Words words) {
        this.words = words;
        this.starts = starts;
        this.assumed = input.assumed();
        load(input.statedLoad());
        input.redirect()
                .ifPresent(over ->
                        put(Kind.REDIRECT, words.say("why.ground.redirect.at", over.name(), words.place(over.at()))));
        rig(input);
        strengths(input);
    }

    private void load(RigLoad load) {
        put(Kind.LOAD, words.load(load));
        put(Kind.AIM, load.toward().print());
        put(Kind.SWAY, load.sway().print());
        put(Kind.LEAN, load.leanOut().print());
        put(
                Kind.ROPE,
                load.ropeStiffness()
                        .filter(stiffness -> load.ropeOut().metres() > 0)
                        .map(stiffness ->
                                words.say("why.ground.rope.with", words.length(load.ropeOut()), words.force(stiffness)))
                        .orElse(words.length(load.ropeOut())));
        put(Kind.LOAD_SPREAD, words.plain(load.spread()));
    }

    private void rig(RigInput input) {
        RigSetup rig = input.rig();
        put(
                Kind.PLACES,
                input.points().stream()
                        .map(point -> point.name() + " " + words.place(point.at()))
                        .collect(Collectors.joining(", ")));
        slings(input);
        put(Kind.LAYOUT, words.say("rig.kind." + rig.kind().word()));
        put(Kind.FOCUS, words.place(rig.focus()));
        put(Kind.STIFFNESS, words.force(rig.stiffness()));
        if (rig.kind().takes("strands")) {
            put(Kind.STRANDS, Integer.toString(rig.strands()));
        }
        List<String> slack = new ArrayList<>();
        for (int i = 0; i < rig.slack().size(); i++) {
            Length extra = rig.slack().get(i);
            if (extra.metres() > 0) {
                slack.add(input.points().get(i).name() + " " + words.length(extra));
            }
        }
        if (!slack.isEmpty()) {
            put(Kind.SLACK, String.join(", ", slack));
        }
        rig.sliding()
                .ifPresent(slides ->
                        put(Kind.CAPTURED, words.say(slides.captured() ? "rig.captured.yes" : "rig.captured.no")));
        rig.friction().ifPresent(friction -> put(Kind.FRICTION, words.plain(friction)));
        rig.limiters().ifPresent(this::limits);
    }

    private void slings(RigInput input) {
        String slung = input.points().stream()
                .flatMap(point -> point.sling().stream()
                        .map(sling -> words.say(
                                "why.ground.sling",
                                point.name(),
                                words.say(sling.tie().key()),
                                words.length(sling.width()),
                                words.force(sling.stiffness().orElse(input.rig().stiffness())))))
                .collect(Collectors.joining(", "));
        if (!slung.isEmpty()) {
            put(Kind.SLINGS, slung);
        }
    }

    private void limits(Limiters limiters) {
        put(
                Kind.LIMITS,
                limiters.range()
                        .map(range -> words.say(
                                "why.ground.limits.range",
                                range.from().print(),
                                range.to().print()))
                        .orElseGet(() ->
                                limiters.fromFocus().stream().map(words::length).collect(Collectors.joining(", "))));
        put(Kind.SLIDER, Integer.toString(limiters.sliderStrands()));
    }

    private void strengths(RigInput input) {
        String known = input.points().stream()
                .map(point ->
                        point.name() + " " + point.strength().map(words::force).orElse(words.say("unknown")))
                .collect(Collectors.joining(", "));
        boolean unknown = input.points().stream().map(RigPoint::strength).anyMatch(Optional::isEmpty);
        all.put(Kind.STRENGTHS, new Ground(Kind.STRENGTHS, known, unknown ? Standing.UNKNOWN : Standing.STATED));
        maybe(Kind.STRAND_STRENGTH, input.rig().strandStrength().map(words::force));
        maybe(
                Kind.KNOT,
                input.rig().knotEfficiency().isPresent()
                        ? Optional.of(words.percent(input.rig().knotEfficiency().getAsDouble()))
                        : Optional.empty());
        put(
                Kind.SPREADS,
                input.points().stream()
                        .map(point -> point.name() + " " + words.plain(point.spread()))
                        .collect(Collectors.joining(", ")));
    }

    private void maybe(Kind kind, Optional<String> value) {
        all.put(
                kind,
                new Ground(
                        kind,
                        value.orElse(words.say("unknown")),
                        value.isPresent() ? Standing.STATED : Standing.UNKNOWN));
    }

    private void put(Kind kind, String value) {
        Standing standing = starts.contains(kind)
                ? Standing.START
                : !kind.rigKey().isEmpty() && assumed.contains(kind.rigKey()) ? Standing.DEFAULT : Standing.STATED;
        all.put(kind, new Ground(kind, value, standing));
    }

    /** All that this rig has, in the order in which it is told. */
    List<Ground> all() {
        return List.copyOf(all.values());
    }

    /** Those of the kinds that this rig has. */
    List<Ground> of(Kind... kinds) {
        return of(EnumSet.copyOf(Arrays.asList(kinds)));
    }

    private List<Ground> of(Set<Kind> kinds) {
        return all.values().stream()
                .filter(ground -> kinds.contains(ground.kind()))
                .toList();
    }

    /** What the rig at rest under one pull rests on, and more. */
    List<Ground> atRest(Kind... more) {
        Set<Kind> kinds = EnumSet.copyOf(AT_REST);
        kinds.addAll(Arrays.asList(more));
        return of(kinds);
    }

    /** What the geometry of the strands rests on. */
    List<Ground> laid() {
        return of(LAID);
    }
}
