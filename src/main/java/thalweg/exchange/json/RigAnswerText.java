package thalweg.exchange.json;

import java.util.List;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonText;
import thalweg.rig.KnotPlace;
import thalweg.rig.LetterCheck;
import thalweg.rig.PointForce;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigState;
import thalweg.rig.RigStudy;
import thalweg.rig.Vector3;
import thalweg.units.Angle;
import thalweg.units.Length;

/** Writes what the calculator says about a rig; a program can read it, and an attached analysis keeps it. */
public final class RigAnswerText {

    private static final int DECIMALS = 6;

    private RigAnswerText() {}

    /** The answer over several lines, with what else was studied. */
    public static String write(RigStudy study) {
        FieldWriter fields = fields(study.answer(), true);
        RigStudyText.write(study, fields);
        return JsonText.indented(finished(study.answer(), fields));
    }

    /** The answer on one line. */
    public static String line(RigAnswer answer) {
        return JsonText.line(json(answer)) + "\n";
    }

    /** The answer on one line, with what was taken off each strength. */
    public static String lineWithChains(RigAnswer answer) {
        return JsonText.line(finished(answer, fields(answer, true))) + "\n";
    }

    /**
     * Whether a text that was kept says nothing else than the answer. Keys that it has not are no difference: a version
     * that computed less has not computed otherwise. Nor are digits that nobody is shown.
     *
     * @param kept as {@link #line} of some version wrote it
     */
    public static boolean agrees(RigAnswer answer, String kept) {
        try {
            return SameFigures.within(JsonDocument.read("the analysis", kept).root(), json(answer));
        } catch (InputException e) {
            return false;
        }
    }

    private static Json json(RigAnswer answer) {
        return finished(answer, fields(answer, false));
    }

    private static Json finished(RigAnswer answer, FieldWriter fields) {
        return fields.put("assumed", Json.texts(answer.assumed())).done();
    }

    private static FieldWriter fields(RigAnswer answer, boolean chains) {
        FieldWriter fields = Json.fields()
                .put("name", answer.input().name())
                .put("steady", steady(answer.steady()))
                .put("sector", sector(answer));
        RigLossText.write(answer, fields);
        answer.limits().ifPresent(limits -> fields.put("limits", limits(limits)));
        RigSlingText.write(answer, fields);
        RedirectText.write(answer, fields);
        return fields.put("checks", checks(answer.checks()))
                .put("safety", RigSafetyText.of(answer, chains))
                .put("material", RigMaterialText.of(answer.material()));
    }

    private static Json steady(RigState state) {
        FieldWriter fields = Json.fields()
                .put("master", place(state.master()))
                .put("point_kN", forces(state))
                .put("share", shares(state));
        angle(fields, "angle_deg", state.angle());
        if (!state.knots().isEmpty()) {
            FieldWriter knots = Json.fields();
            state.knots().forEach(knot -> knots.put(knot.point(), knot(knot)));
            fields.put("knots", knots.done());
        }
        return fields.done();
    }

    private static Json knot(KnotPlace knot) {
        return Json.fields()
                .put("at", place(knot.at()))
                .put("against_master", Json.of(knot.againstMaster()))
                .done();
    }

    private static Json limits(List<Length> limits) {
        List<Json> metres = limits.stream().map(limit -> number(limit.metres())).toList();
        return Json.fields().put("limit_m", new Json.Items(metres)).done();
    }

    /** What is unknown is null, with the reason beside it. */
    private static void angle(FieldWriter fields, String key, Optional<Angle> angle) {
        fields.put(key, angle.map(known -> number(known.degrees())).orElse(Json.NOTHING));
        if (angle.isEmpty()) {
            fields.put(key + "_why", "fewer than two strands are loaded at the master point");
        }
    }

    private static Json sector(RigAnswer answer) {
        List<Json> directions = answer.sector().directions().stream()
                .map(state -> {
                    FieldWriter one = Json.fields()
                            .put("deg", number(state.direction().degrees()))
                            .put("point_kN", forces(state));
                    angle(one, "angle_deg", state.angle());
                    return (Json) one.done();
                })
                .toList();
        FieldWriter worst = Json.fields();
        answer.sector()
                .worst()
                .forEach(force -> worst.put(
                        force.point(),
                        Json.fields()
                                .put("kN", number(force.force().inKilonewtons()))
                                .put("deg", number(force.direction().degrees()))
                                .done()));
        FieldWriter sector =
                Json.fields().put("directions", new Json.Items(directions)).put("worst", worst.done());
        answer.sector()
                .widest()
                .ifPresent(widest -> sector.put(
                        "widest_angle",
                        Json.fields()
                                .put("angle_deg", number(widest.angle().degrees()))
                                .put("deg", number(widest.direction().degrees()))
                                .done()));
        return sector.done();
    }

    private static Json checks(List<LetterCheck> checks) {
        FieldWriter fields = Json.fields();
        for (LetterCheck check : checks) {
            fields.put(
                    check.letter().name(),
                    Json.fields()
                            .put("verdict", check.verdict().word())
                            .put(
                                    "figure",
                                    check.figure().isPresent()
                                            ? number(check.figure().getAsDouble())
                                            : Json.NOTHING)
                            .put("why", check.why())
                            .done());
        }
        return fields.done();
    }

    private static Json forces(RigState state) {
        FieldWriter fields = Json.fields();
        for (PointForce force : state.points()) {
            fields.put(force.point(), number(force.force().inKilonewtons()));
        }
        return fields.done();
    }

    private static Json shares(RigState state) {
        FieldWriter fields = Json.fields();
        for (PointForce force : state.points()) {
            fields.put(force.point(), number(force.share()));
        }
        return fields.done();
    }

    static Json place(Vector3 at) {
        return new Json.Items(List.of(number(at.x()), number(at.y()), number(at.z())));
    }

    private static Json number(double value) {
        return Json.rounded(value, DECIMALS);
    }
}
