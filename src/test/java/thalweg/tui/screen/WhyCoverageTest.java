package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.drawing.Drawing;
import thalweg.drawing.Shape;
import thalweg.exchange.json.RigFile;
import thalweg.fault.Sentence;
import thalweg.rig.Analyze;
import thalweg.rig.CascadeOdds;
import thalweg.rig.FindBestFocus;
import thalweg.rig.FindPeakRange;
import thalweg.rig.LimitDraft;
import thalweg.rig.LoadDraft;
import thalweg.rig.PointDraft;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigAssumption;
import thalweg.rig.RigCaution;
import thalweg.rig.RigDraft;
import thalweg.rig.RigDrawing;
import thalweg.rig.RigInput;
import thalweg.rig.RigKind;
import thalweg.rig.RigState;
import thalweg.rig.RigStudy;
import thalweg.rig.SetupDraft;
import thalweg.service.RunCascade;
import thalweg.sheet.LoadWords;
import thalweg.testing.Around;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;
import thalweg.units.UnitSystem;
import thalweg.why.ExplainRig;
import thalweg.why.Figure;
import thalweg.why.Ground;
import thalweg.why.Question;

/** Whether every number that the rig screen prints of a rig stands in a figure that is explained. */
final class WhyCoverageTest {

    /** A number with the unit behind it. */
    private static final Pattern NUMBER =
            Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?(?: ?(?:kN|lbf|kg|lb|m|ft|%|°|times|mm|s)(?![a-z]))?");

    /** Long enough for chance to show something, short enough to wait for. */
    private static final int TRIALS = 200;

    /** What the drafts below have not: a sling, a tree without one, a bolt of two strengths, what weakens parts. */
    private static final String SLUNG = """
            {"points": [
               {"name": "oak", "at": [-0.613, 0.071, 0.02], "strength_kN": 23.7, "is": "tree",
                "sling": {"tie": "basket", "width_m": 0.313, "around_m": 1.07, "reach_m": 0.517,
                          "strand_kN": 15.3, "knot_efficiency": 0.71}},
               {"name": "bolt", "at": [0.527, -0.033], "radial_kN": 21.3, "axial_kN": 14.9, "condition": "worn"},
               {"name": "pine", "at": [0.157, 0.463], "strength_kN": 7.3, "is": "tree"}],
             "load": {"mass_kg": 87, "toward_deg": 3.7, "sway_deg": 13.1, "lean_out_deg": 4.3, "factor": 1.35},
             "rig": {"kind": "focused", "focus": [0.031, -1.067, 0.01], "EA_kN": 63.7, "strand_kN": 13.3,
                     "knot": "water_knot", "condition": "worn"}}
            """;

    private static final String REDIRECTED = """
            {"points": [
               {"name": "left", "at": [-0.313, 0.071, 0.02], "strength_kN": 23.7},
               {"name": "right", "at": [0.227, -0.033], "strength_kN": 11.9}],
             "load": {"mass_kg": 87, "toward_deg": 3.7, "sway_deg": 13.1, "rope_out_m": 17.3, "rope_EA_kN": 41,
                      "redirect": {"name": "R", "at": [0.83, -1.51, 0.23], "strength_kN": 12.7}},
             "rig": {"kind": "focused", "focus": [0.031, -0.467, 0.01], "EA_kN": 63.7, "strand_kN": 13.3}}
            """;

    private record Shown(String what, RigStudy study, RigState swung, Surroundings around) {

        @Override
        public String toString() {
            return what + ", " + around.units();
        }
    }

    private static Stream<Shown> rigs() {
        List<Shown> rigs = new ArrayList<>();
        for (RigKind kind : RigKind.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                RigInput input = draft(kind).check().input().orElseThrow();
                rigs.add(shown(kind.word(), input, units));
            }
        }
        for (UnitSystem units : UnitSystem.values()) {
            rigs.add(shown("slung", RigFile.read("slung", SLUNG), units));
            rigs.add(shown("redirected", RigFile.read("redirected", REDIRECTED), units));
        }
        return rigs.stream();
    }

    /** Imperial figures have fewer digits, so that some of them stand in two places by chance. */
    private static Stream<Shown> metricRigs() {
        return rigs().filter(shown -> shown.around().units() == UnitSystem.METRIC);
    }

    private static RigDraft draft(RigKind kind) {
        List<PointDraft> points = List.of(
                new PointDraft("left", List.of(-0.313, 0.071, 0.02), some(23.7), some(0.31), Optional.of(true)),
                new PointDraft("right", List.of(0.227, -0.033, 0.0), some(11.9), some(0.17), Optional.of(false)),
                new PointDraft("high", List.of(0.057, 0.263, 0.0), some(7.3), some(0.23), Optional.empty()));
        int count = kind == RigKind.SINGLE ? 1 : Math.min(kind.mostPoints(), 3);
        SetupDraft setup = SetupDraft.of(kind, 0.031, -0.467, 0.01, 63.7).withStrength(13.3, 0.64);
        return new RigDraft(
                "",
                points.subList(0, kind == RigKind.SLIDING ? 2 : count),
                LoadDraft.ofMass(87, 3.7, 13.1).withLeanOut(4.3).withFactor(1.35),
                kind == RigKind.LIMITED ? setup.withLimits(LimitDraft.over(-7, 9), 0.17) : setup);
    }

    private static OptionalDouble some(double value) {
        return OptionalDouble.of(value);
    }

    private static Shown shown(String what, RigInput input, UnitSystem units) {
        RigAnswer answer = Analyze.of(input);
        Optional<CascadeOdds> odds = Optional.of(RunCascade.all(answer.input(), TRIALS, 7, (done, planned) -> true));
        RigStudy study = new RigStudy(
                answer,
                Optional.of(FindBestFocus.of(answer.input())),
                odds,
                Optional.of(FindPeakRange.of(answer)),
                Optional.empty());
        RigState swung = answer.sector().directions().get(17);
        return new Shown(what, study, swung, Around.sized(60, 120).with(units));
    }

    /** All that is printed of a rig but what is the same for every rig. */
    private static List<String> printed(Shown shown) {
        RigAnswer answer = shown.study().answer();
        Surroundings around = shown.around();
        Set<String> fixed = Stream.concat(
                        Arrays.stream(RigAssumption.values()).map(RigAssumption::key),
                        Arrays.stream(RigCaution.values()).map(RigCaution::key))
                .map(key -> "- "
                        + around.say(
                                key,
                                String.join(", ", answer.assumed()),
                                LoadWords.factor(answer.input().load().factor())))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        fixed.add(around.say("rig.material.note"));
        fixed.add(around.say("rig.material.note_slung"));
        fixed.add(around.say("rig.peaks"));
        fixed.add(around.say("rig.cascade.rising"));
        List<Paragraph> paragraphs =
                new ArrayList<>(RigText.of(answer, PeakText.of(shown.study().peakRange()), around));
        RigStudies studies = new RigStudies(
                shown.study().bestFocus(),
                Optional.empty(),
                shown.study().cascade(),
                shown.study().peakRange());
        paragraphs.addAll(StudyText.of(studies, Optional.of(answer), around));
        List<String> lines = new ArrayList<>();
        paragraphs.stream()
                .map(Paragraph::text)
                .filter(text -> !fixed.contains(text))
                .map(text -> text.replace("95 % intervals", "intervals"))
                .forEach(lines::add);
        lines.add(RigText.swung(shown.swung(), around));
        answer.losses().forEach(loss -> {
            lines.add(LossText.headline(loss, around));
            lines.addAll(labels(RigDrawing.of(answer, loss, around.units(), Sentence::toString)));
        });
        lines.addAll(labels(RigDrawing.of(answer, answer.steady(), around.units(), Sentence::toString)));
        lines.addAll(labels(RigDrawing.of(answer, shown.swung(), around.units(), Sentence::toString)));
        return lines;
    }

    private static List<String> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Shape.Label.class::isInstance)
                .map(shape -> ((Shape.Label) shape).text())
                .toList();
    }

    private static Set<String> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(found -> found.group().replace(" °", "°"))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<Figure> figures(Shown shown) {
        Question question = new Question(
                shown.study(),
                Set.of(Ground.Kind.LOAD),
                shown.swung(),
                shown.around().settings().loads());
        return ExplainRig.of(question, shown.around().phrases(), shown.around().units());
    }

    /** The numbers that are printed and stand in none of the figures. */
    private static Set<String> unexplained(Shown shown, Predicate<Figure> counts) {
        Set<String> explained = new LinkedHashSet<>();
        figures(shown).stream().filter(counts).forEach(figure -> {
            explained.addAll(numbers(figure.value()));
            explained.addAll(numbers(figure.label()));
            figure.how().forEach(sentence -> explained.addAll(numbers(sentence)));
        });
        Set<String> missing = new LinkedHashSet<>();
        for (String line : printed(shown)) {
            numbers(line).stream()
                    .filter(number -> !explained.contains(number))
                    .forEach(number -> missing.add(number + " in: " + line));
        }
        return missing;
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void everyNumberOfTheRigScreenIsExplained(Shown shown) {
        assertThat(printed(shown).stream().flatMap(line -> numbers(line).stream()))
                .hasSizeGreaterThan(25);

        assertThat(unexplained(shown, figure -> true)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("metricRigs")
    void whatIsToldTogetherIsMissedWhereItIsLeftOut(Shown shown) {
        boolean held = shown.study().answer().losses().stream().anyMatch(PointLoss::held);
        for (Figure.Topic topic : Figure.Topic.values()) {
            if (topic == Figure.Topic.LOSS && !held) {
                continue;
            }
            assertThat(unexplained(shown, figure -> figure.topic() != topic))
                    .as(topic.name())
                    .isNotEmpty();
        }
    }
}
