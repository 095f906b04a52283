package thalweg.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thalweg.json.Json;
import thalweg.plan.Plan;
import thalweg.plan.RigReview;
import thalweg.plan.RopeChoice;
import thalweg.plan.Timetable;
import thalweg.plan.TurnAround;
import thalweg.plan.Way;

/** A plan as JSON; what is unknown is null. */
final class PlanJson {

    private static final int DECIMALS = 1;

    private PlanJson() {}

    static Json of(Plan plan) {
        RopeChoice ropes = plan.ropes();
        double[] end = plan.timetable().end();
        return Json.fields()
                .put("canyon", plan.canyonName())
                .put("on", plan.request().on().toString())
                .put(
                        "ropes",
                        Json.fields()
                                .put(
                                        "carry",
                                        new Json.Items(ropes.carried().stream()
                                                .<Json>map(index -> Json.of(index.longValue()))
                                                .toList()))
                                .put("serves", Json.of(ropes.serves()))
                                .put("spare", Json.of(ropes.spare()))
                                .put("weight_kg", number(ropes.kilograms()))
                                .put("drops", items(ropes.drops().stream().map(PlanJson::drop)))
                                .done())
                .put(
                        "minutes",
                        Json.fields()
                                .put("approach", way(plan.approach()))
                                .put("line", Json.rounded(end[1], DECIMALS))
                                .put("line_early", Json.rounded(end[0], DECIMALS))
                                .put("line_late", Json.rounded(end[2], DECIMALS))
                                .put("exit", way(plan.exit()))
                                .put(
                                        "steps",
                                        items(plan.timetable().steps().stream().map(step -> step(plan, step))))
                                .done())
                .put(
                        "sunset",
                        text(plan.daylight().flatMap(light -> light.set()).map(Object::toString)))
                .put("turn_around", items(TurnAround.of(plan).stream().map(PlanJson::turn)))
                .put("concentration_min", number(plan.concentration()))
                .put(
                        "due",
                        items(plan.due().stream()
                                .map(part -> Json.fields()
                                        .put("station", part.row().stationName())
                                        .put("part", part.row().part().label())
                                        .put("task", word(part.first().task()))
                                        .put("reason", word(part.first().reason()))
                                        .done())))
                .put("rigs", items(plan.reviews().stream().map(PlanJson::review)))
                .put("bring", BringJson.of(plan.bring()))
                .put("pace", PaceJson.of(plan))
                .put("figures", BringJson.figures(plan))
                .put("without_analysis", Json.texts(plan.withoutAnalysis()))
                .done();
    }

    private static Json items(Stream<? extends Json> values) {
        List<Json> all = values.<Json>map(value -> value).toList();
        return new Json.Items(all);
    }

    private static Json drop(RopeChoice.Drop drop) {
        return Json.fields()
                .put("place", drop.need().place())
                .put(
                        "length_m",
                        number(drop.need()
                                .length()
                                .map(length -> OptionalDouble.of(length.metres()))
                                .orElse(OptionalDouble.empty())))
                .put("technique", text(drop.technique().map(PlanJson::word)))
                .put("after_loss", text(drop.afterLoss().map(PlanJson::word)))
                .put("lowered", drop.lowered().<Json>map(Json::of).orElse(Json.NOTHING))
                .done();
    }

    private static Json turn(TurnAround point) {
        return Json.fields()
                .put("at", word(point.kind()))
                .put(
                        "place",
                        point.place()
                                .<Json>map(step -> Json.of((long) step.place()))
                                .orElse(Json.NOTHING))
                .put("latest_min", Json.rounded(point.latest(), DECIMALS))
                .put(
                        "late_min",
                        number(point.plannedLate().map(OptionalDouble::of).orElse(OptionalDouble.empty())))
                .done();
    }

    private static Json step(Plan plan, Timetable.Step step) {
        return Json.fields()
                .put("place", step.step().place())
                .put("early", Json.rounded(step.early(), DECIMALS))
                .put("middle", Json.rounded(step.middle(), DECIMALS))
                .put("late", Json.rounded(plan.late(step), DECIMALS))
                .put("way_out", step.step().wayOut().<Json>map(Json::of).orElse(Json.NOTHING))
                .done();
    }

    private static Json review(RigReview review) {
        return Json.fields()
                .put("station", review.station())
                .put("analysis", review.analysis())
                .put("made", review.made().print())
                .put("least_ratio", number(review.leastRatio()))
                .put("strength_unknown", Json.of(review.unknown()))
                .put("within_strength", Json.of(review.within()))
                .put("old", Json.of(review.old()))
                .done();
    }

    private static Json way(Way way) {
        return number(way.minutes().map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    private static Json number(OptionalDouble value) {
        return value.isPresent() ? Json.rounded(value.getAsDouble(), DECIMALS) : Json.NOTHING;
    }

    private static Json text(Optional<String> value) {
        return value.<Json>map(Json::of).orElse(Json.NOTHING);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
