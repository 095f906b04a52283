package thalweg.why;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import thalweg.rig.Limiters;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigLoad;
import thalweg.rig.RigSector;
import thalweg.rig.RigSetup;
import thalweg.rig.StrandMaterial;
import thalweg.settings.LoadPreset;
import thalweg.sheet.LaidWords;
import thalweg.sheet.LoadWords;
import thalweg.units.Force;
import thalweg.units.UnitSystem;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains what was put in, as far as it is shown as a figure: the load, the layout, its focus, its stiffness, its limits. */
final class ExplainInput {

    /** For which the stretch of a strand is told [kN]. */
    private static final double ONE_KILONEWTON = 1;

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;

    ExplainInput(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(pull());
        figures.add(direction());
        figures.add(layout());
        figures.add(stiffness());
        figures.add(focus());
        answer.input().rig().limiters().ifPresent(limiters -> figures.add(limits(limiters)));
        figures.add(all());
        return figures;
    }

    /** Every input with its value, to which the other figures refer by name. */
    private Figure all() {
        List<Ground> all = grounds.all();
        long open = all.stream()
                .filter(ground -> ground.standing() != Ground.Standing.STATED)
                .count();
        return new Figure(
                Topic.LOAD,
                words.say("why.all"),
                words.say("why.all.value", all.size(), open),
                all.stream().map(ground -> ground.print(words.phrases()) + ".").toList(),
                List.of(),
                words.say("why.all.source"),
                words.say("why.all.not"));
    }

    private Figure pull() {
        RigLoad load = answer.input().load();
        List<String> how = new ArrayList<>();
        String atRest = words.force(load.atRest());
        how.add(load.mass()
                .map(mass -> words.say(
                        words.units() == UnitSystem.METRIC ? "why.pull.mass" : "why.pull.mass_weighs",
                        mass.print(words.units()),
                        atRest))
                .orElseGet(() -> words.say("why.pull.force", atRest)));
        if (load.factor() != 1) {
            how.add(words.say("why.pull.factor", atRest, LoadWords.factor(load.factor()), words.force(load.weight())));
            how.add(words.say("why.pull.errs"));
        }
        String source = words.loads().stream()
                .filter(preset -> isStated(preset, load))
                .findFirst()
                .map(preset -> words.say("why.pull.source.named", preset.name(), preset.source()))
                .orElseGet(() -> words.say("why.pull.source"));
        return new Figure(
                Topic.LOAD,
                words.say("why.pull"),
                words.say("why.pull.value", words.force(load.weight()), words.load(load)),
                how,
                grounds.of(Kind.LOAD),
                source,
                words.say("why.pull.not"));
    }

    private static boolean isStated(LoadPreset preset, RigLoad load) {
        boolean sameMass = preset.mass().equals(load.mass());
        boolean sameForce = load.mass().isPresent()
                || preset.force().filter(load.atRest()::equals).isPresent();
        return sameMass && sameForce && preset.factor() == load.factor();
    }

    private Figure direction() {
        RigLoad load = answer.input().statedLoad();
        return new Figure(
                Topic.LOAD,
                words.say("why.direction"),
                words.say(
                        "rig.load.aim",
                        load.toward().print(),
                        load.sway().print(),
                        load.leanOut().print()),
                List.of(
                        answer.input().redirect().isPresent()
                                ? words.say("why.direction.redirect")
                                : load.sway().degrees() == 0
                                        ? words.say("why.direction.still")
                                        : words.say("why.direction.sway", RigSector.DIRECTIONS)),
                grounds.of(Kind.AIM, Kind.SWAY, Kind.LEAN, Kind.REDIRECT),
                words.say("why.stated"),
                words.say("why.direction.not"));
    }

    private Figure layout() {
        LaidWords laid = new LaidWords(words.phrases(), words.units());
        return new Figure(
                Topic.LOAD,
                words.say("why.layout"),
                laid.sentence(answer.input()),
                List.of(words.say("why.layout." + answer.input().rig().kind().word())),
                grounds.of(Kind.LAYOUT, Kind.STRANDS, Kind.STIFFNESS, Kind.CAPTURED, Kind.FRICTION, Kind.SLIDER),
                words.say("why.layout.source"),
                words.say("why.layout.not"));
    }

    private Figure stiffness() {
        RigSetup rig = answer.input().rig();
        Force stiffness = rig.stiffness();
        String percent = Words.fixed(100 * ONE_KILONEWTON / stiffness.inKilonewtons(), 2);
        String materials = Arrays.stream(StrandMaterial.values())
                .filter(material -> material.nominal().equals(stiffness))
                .map(material -> words.say(
                        "why.stiffness.material",
                        words.say(material.key()),
                        words.force(material.low()),
                        words.force(material.high())))
                .collect(Collectors.joining("; "));
        return new Figure(
                Topic.LOAD,
                words.say("why.stiffness"),
                words.force(stiffness),
                List.of(words.say("why.stiffness.how", words.kilonewtons(ONE_KILONEWTON), percent)),
                grounds.of(Kind.STIFFNESS),
                materials.isEmpty() ? words.say("why.stated") : words.say("why.stiffness.source", materials),
                words.say("why.stiffness.not"));
    }

    private Figure focus() {
        return new Figure(
                Topic.LOAD,
                words.say("why.focus"),
                words.place(answer.input().rig().focus()),
                List.of(words.say("why.focus.how", words.place(answer.steady().master()))),
                grounds.of(Kind.FOCUS),
                words.say("why.focus.source"),
                words.say("why.focus.not"));
    }

    private Figure limits(Limiters limiters) {
        LaidWords laid = new LaidWords(words.phrases(), words.units());
        List<String> how = new ArrayList<>();
        how.add(limiters.range()
                .map(range -> words.say(
                        "why.limits.found", range.from().print(), range.to().print()))
                .orElseGet(() -> words.say("why.limits.stated")));
        laid.freedom(answer).ifPresent(how::add);
        how.add(words.say("why.limits.slider", words.length(limiters.slider())));
        String places = limiters.fromFocus().stream().map(words::length).collect(Collectors.joining(", "));
        return new Figure(
                Topic.LOAD,
                words.say("why.limits"),
                words.say("why.limits.value", places, laid.freedom(answer).orElse("")),
                how,
                grounds.atRest(Kind.SWAY),
                words.say("why.limits.source"),
                words.say("why.limits.not"));
    }
}
