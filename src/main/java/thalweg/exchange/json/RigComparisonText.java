package thalweg.exchange.json;

import java.util.List;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.LaidOut;
import thalweg.rig.RigComparison;
import thalweg.rig.RigQuestion;
import thalweg.rig.RigRecommendation;

/** Writes layouts side by side. */
final class RigComparisonText {

    private static final int DECIMALS = 6;

    private static final String NOTE =
            "figures of a model under the same assumptions, never a promise; the order of what counts is a choice";

    private RigComparisonText() {}

    static Json of(RigComparison comparison) {
        RigRecommendation recommendation = comparison.recommendation();
        return Json.fields()
                .put("matters", comparison.priority().word())
                .put(
                        "layouts",
                        new Json.Items(comparison.layouts().stream()
                                .map(RigComparisonText::layout)
                                .toList()))
                .put(
                        "questions",
                        new Json.Items(comparison.questions().stream()
                                .map(RigComparisonText::question)
                                .toList()))
                .put(
                        "speaks_for",
                        recommendation
                                .choice()
                                .map(choice -> Json.of(choice.label()))
                                .orElse(Json.NOTHING))
                .put("says", recommendation.says())
                .put("rests_on", english(recommendation.restsOn()))
                .put("would_change", english(recommendation.wouldChange()))
                .put("note", NOTE)
                .done();
    }

    private static List<String> english(List<Sentence> sentences) {
        return sentences.stream().map(Sentence::toString).toList();
    }

    private static Json layout(LaidOut layout) {
        FieldWriter fields = Json.fields()
                .put("layout", layout.label())
                .put("possible", Json.of(layout.answer().isPresent()));
        if (layout.answer().isEmpty()) {
            return fields.put("why", layout.why()).done();
        }
        FieldWriter verdicts = Json.fields();
        layout.answer()
                .orElseThrow()
                .checks()
                .forEach(check ->
                        verdicts.put(check.letter().name(), check.verdict().word()));
        OptionalDouble ratio = layout.leastRatio();
        fields.put("verdicts", verdicts.done())
                .put("least_safety_ratio", ratio.isPresent() ? RigSafetyText.ratio(ratio.getAsDouble()) : Json.NOTHING)
                .put("hardest_pull_kN", Json.rounded(layout.hardestPull(), DECIMALS));
        boolean held = Double.isFinite(layout.farthestDrop());
        return fields.put("drop_m", held ? Json.rounded(layout.farthestDrop(), DECIMALS) : Json.NOTHING)
                .done();
    }

    private static Json question(RigQuestion question) {
        return Json.fields()
                .put("question", question.asked().toString())
                .put("answer", question.answer().map(Json::of).orElse(Json.NOTHING))
                .put("why", question.why())
                .done();
    }
}
