package thalweg.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.exchange.json.RigFile;
import thalweg.rig.Analyze;
import thalweg.rig.LimitDraft;
import thalweg.rig.LoadDraft;
import thalweg.rig.PointDraft;
import thalweg.rig.RedirectDraft;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigDraft;
import thalweg.rig.RigKind;
import thalweg.rig.RigStudy;
import thalweg.rig.SetupDraft;
import thalweg.service.LoadPhrases;
import thalweg.settings.Settings;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;
import thalweg.why.Ground.Kind;

class ExplainRigTest {

    private static final Phrases PHRASES = LoadPhrases.english();

    private static final Pattern TWO_LEGS =
            Pattern.compile("([0-9.]+) kN x sin ([0-9.]+)° / sin ([0-9.]+)° = ([0-9.]+) kN");

    private static RigDraft pair(RigKind kind) {
        List<PointDraft> points = List.of(PointDraft.of("A", -0.31, 0.07, 0), PointDraft.of("B", 0.22, -0.03, 0.04));
        SetupDraft setup = SetupDraft.of(kind, 0.03, -0.47, 0, 63);
        return new RigDraft(
                "",
                kind == RigKind.SINGLE ? points.subList(0, 1) : points,
                LoadDraft.ofMass(83, 4),
                kind == RigKind.LIMITED ? setup.withLimits(LimitDraft.at(0.05, 0.06), 0.2) : setup);
    }

    private static RigAnswer answer(RigDraft draft) {
        return Analyze.of(draft.check().input().orElseThrow());
    }

    private static List<Figure> figures(RigDraft draft) {
        return ExplainRig.of(
                Question.of(
                        RigStudy.of(answer(draft)), Settings.standard(PHRASES).loads()),
                PHRASES,
                UnitSystem.METRIC);
    }

    private static Figure figure(List<Figure> figures, String label) {
        return figures.stream()
                .filter(one -> one.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not among "
                        + figures.stream().map(Figure::label).toList()));
    }

    private static String text(Figure figure) {
        return figure.lines(PHRASES).stream().map(Figure.Line::text).collect(Collectors.joining("\n"));
    }

    /** The law of sines for three forces in balance, redone from the printed numbers alone. Source: Lami, 1679. */
    @ParameterizedTest
    @CsvSource({"0, 0", "12, 0", "-20, 8", "5, -15"})
    void twoLegsAreReckonedFromThePrintedNumbers(double toward, double lean) {
        RigDraft draft = pair(RigKind.FOCUSED);
        List<Figure> figures =
                figures(draft.withLoad(LoadDraft.ofForce(1.5, toward, 0).withLeanOut(lean)));

        for (String point : List.of("A", "B")) {
            Figure pull = figure(figures, "Pull on " + point + " at the aim");
            Matcher found = TWO_LEGS.matcher(pull.how().get(0));
            assertThat(found.find()).as(pull.how().toString()).isTrue();
            double load = Double.parseDouble(found.group(1));
            double sine = Math.sin(Math.toRadians(Double.parseDouble(found.group(2))));
            double all = Math.sin(Math.toRadians(Double.parseDouble(found.group(3))));
            assertThat(load * sine / all).isCloseTo(Double.parseDouble(found.group(4)), within(0.01));
            assertThat(pull.value()).startsWith(found.group(4) + " kN (");
        }
    }

    @ParameterizedTest
    @EnumSource(RigKind.class)
    void everyDefaultThatStandsInIsAmongTheInputsAndMarked(RigKind kind) {
        RigAnswer answer = answer(pair(kind));
        Set<String> known = Arrays.stream(Kind.values()).map(Kind::rigKey).collect(Collectors.toSet());

        List<String> inputs = figure(figures(pair(kind)), "All inputs").how();

        assertThat(answer.assumed()).isNotEmpty();
        assertThat(known).containsAll(answer.assumed());
        assertThat(inputs.stream().filter(line -> line.contains("(default)")))
                .hasSize(answer.assumed().size());
    }

    @ParameterizedTest
    @EnumSource(RigKind.class)
    void everyFigureSaysHowAndWhereFromAndWhatItIsNot(RigKind kind) {
        for (Figure figure : figures(pair(kind))) {
            assertThat(figure.lines(PHRASES))
                    .as(figure.label())
                    .extracting(Figure.Line::part)
                    .contains(Figure.Part.HOW, Figure.Part.SOURCE, Figure.Part.IS_NOT);
        }
    }

    @Test
    void theLoadIsMassTimesGravityTimesFactor() {
        RigDraft draft = pair(RigKind.FOCUSED);
        List<Figure> figures = figures(draft.withLoad(LoadDraft.ofMass(100, 0).withFactor(1.5)));

        Figure pull = figure(figures, "Pull of the load");

        assertThat(pull.value()).isEqualTo("1.47 kN (100 kg x 1.5 (lowered, one person))");
        assertThat(pull.how())
                .contains("100 kg x 9.80665 m/s² = 0.98 kN at rest.")
                .contains("0.98 kN x factor 1.5 = 1.47 kN, taken to pull all the time.");
        assertThat(pull.source()).contains("from memory, unconfirmed");
    }

    @Test
    void aStartValueIsCalledOneWhereverItBears() {
        RigAnswer answer = answer(pair(RigKind.FOCUSED));
        Question question =
                new Question(RigStudy.of(answer), Set.of(Kind.LOAD, Kind.STIFFNESS), answer.steady(), List.of());

        List<Figure> figures = ExplainRig.of(question, PHRASES, UnitSystem.METRIC);

        assertThat(text(figure(figures, "Pull on A at the aim")))
                .contains("Of this nobody stated: load: 83 kg (start value);")
                .contains("stiffness of a strand: 63.0 kN (start value)");
        assertThat(text(figure(figures, "Webbing or cord, and connectors"))).doesNotContain("start value");
    }

    @Test
    void anUnknownStrengthIsNotHidden() {
        Figure ratio = figure(figures(pair(RigKind.FOCUSED)), "Strength over force, A");

        assertThat(ratio.value()).isEqualTo("unknown (the strength of A is not known)");
        assertThat(text(ratio))
                .contains("Strength: unknown (the strength of A is not known).")
                .contains("strengths of the points: A unknown, B unknown")
                .contains("At rest the largest force on it is 0.");
    }

    @Test
    void aLegIsReckonedFromItsStrandsAndItsKnot() {
        RigDraft draft = pair(RigKind.FOCUSED);
        List<Figure> figures = figures(draft.withRig(draft.rig().withStrength(17.8, 0.64)));

        assertThat(text(figure(figures, "Strength over force, A leg")))
                .contains("35.6 kN (strands: 2, of 17.8 kN each) as stated x 0.64 (knot) = 22.8 kN.")
                .contains("At rest: 22.8 kN / ");
    }

    @Test
    void aSlingIsReckonedFromItsOwnStrands() {
        String rig = """
                {"points": [{"name": "oak", "at": [-0.6, 0], "is": "tree",
                             "sling": {"tie": "choke", "reach_m": 0.5, "strand_kN": 15, "knot_efficiency": 1}},
                            {"name": "B", "at": [0.5, 0]}],
                 "load": {"mass_kg": 90, "toward_deg": 0},
                 "rig": {"kind": "focused", "focus": [0, -1], "EA_kN": 60, "strand_kN": 13, "knot_efficiency": 0.6}}
                """;
        RigAnswer answer = Analyze.of(RigFile.read("the rig", rig));

        List<Figure> figures = ExplainRig.of(Question.of(RigStudy.of(answer), List.of()), PHRASES, UnitSystem.METRIC);

        assertThat(text(figure(figures, "Strength over force, oak sling")))
                .contains("30.0 kN (strands: 2, of 15.0 kN each) as stated x 0.8 (tie) x 1 (knot) = 24.0 kN.");
        assertThat(text(figure(figures, "Pull on oak at the aim"))).contains("bears the sum of the tensions");
        assertThat(figure(figures, "Sling round oak").value()).endsWith(" kN");
    }

    @Test
    void aRedirectIsReckonedFromTheTensionAndTheBend() {
        RigDraft draft = pair(RigKind.FOCUSED).withRedirect(RedirectDraft.at(0.4, -1.5, 0));
        RigAnswer answer = Analyze.of(draft.check().input().orElseThrow());
        List<Figure> figures = figures(draft);

        assertThat(text(figure(figures, "Force on redirect")))
                .contains("2 x ")
                .contains("sin(half of "
                        + answer.redirect().orElseThrow().deflection().print() + ")");
        assertThat(text(figure(figures, "Loss of redirect"))).contains("neither the fall by the rope that comes free");
        assertThat(text(figure(figures, "Direction of the load"))).contains("The rope runs over a redirect");
    }

    @Test
    void aPointWhoseLegIsSlackSaysSo() {
        RigDraft draft = pair(RigKind.FOCUSED);
        SetupDraft slack = draft.rig().withSlack(Map.of("B", 0.3));

        assertThat(figure(figures(draft.withRig(slack)), "Pull on B at the aim")
                        .how()
                        .get(0))
                .isEqualTo("Its strand hangs slack, so B bears nothing.");
        assertThat(figure(figures(draft.withRig(slack)), "Pull on A at the aim")
                        .how()
                        .get(0))
                .startsWith("Only the leg to A is loaded, and it bears the whole load of 0.81 kN.");
    }
}
