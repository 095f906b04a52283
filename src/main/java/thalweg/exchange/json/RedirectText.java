package thalweg.exchange.json;

import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.RedirectFigures;
import thalweg.rig.RigAnswer;
import thalweg.units.Angle;
import thalweg.units.Force;

/** Writes what a redirect bears, and what the rig does without it. */
final class RedirectText {

    private static final int DECIMALS = 6;

    private static final String NOTE = "at rest; the fall and swing to there are not modelled";

    private RedirectText() {}

    /** Sets the key for a redirect, unless there is none. */
    static void write(RigAnswer answer, FieldWriter out) {
        answer.redirect().ifPresent(figures -> out.put("redirect", json(answer, figures)));
    }

    private static Json json(RigAnswer answer, RedirectFigures figures) {
        FieldWriter fields = Json.fields()
                .put("name", figures.redirect().name())
                .put("pull_deg", degrees(answer.input().load().toward()))
                .put("pull_out_deg", degrees(answer.input().load().leanOut()))
                .put("deflection_deg", degrees(figures.deflection()))
                .put("kN", force(figures.force()))
                .put(
                        "worst",
                        Json.fields()
                                .put("kN", force(figures.worst()))
                                .put("deg", degrees(figures.worstToward()))
                                .done());
        if (figures.ratio().isPresent()) {
            fields.put(
                    "strength_over_worst", RigSafetyText.ratio(figures.ratio().getAsDouble()));
        } else {
            fields.put("strength_over_worst", Json.NOTHING)
                    .put(
                            "strength_over_worst_why",
                            figures.redirect().strength().isEmpty()
                                    ? "the strength of " + figures.redirect().name() + " is not known"
                                    : "it bears nothing");
        }
        return fields.put("if_lost", freed(figures.freed())).done();
    }

    private static Json freed(RedirectFigures.Freed freed) {
        FieldWriter steady = Json.fields();
        freed.steady().points().forEach(point -> steady.put(point.point(), force(point.force())));
        FieldWriter worst = Json.fields();
        freed.worst()
                .forEach(point -> worst.put(
                        point.point(),
                        Json.fields()
                                .put("kN", force(point.force()))
                                .put("deg", degrees(point.direction()))
                                .done()));
        FieldWriter fields = Json.fields()
                .put("turn_deg", degrees(freed.turn()))
                .put("point_kN", steady.done())
                .put("worst", worst.done());
        freed.slack()
                .ifPresentOrElse(
                        slack -> fields.put("slack_m", Json.rounded(slack.metres(), DECIMALS)),
                        () -> fields.put("slack_m", Json.NOTHING)
                                .put(
                                        "slack_m_why",
                                        "rope_out_m is not stated, or shorter than the way from the master to the redirect"));
        return fields.put("note", NOTE).done();
    }

    private static Json force(Force force) {
        return Json.rounded(force.inKilonewtons(), DECIMALS);
    }

    private static Json degrees(Angle angle) {
        return Json.rounded(angle.degrees(), DECIMALS);
    }
}
