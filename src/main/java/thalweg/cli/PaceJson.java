package thalweg.cli;

import thalweg.json.Json;
import thalweg.plan.PacedTrip;
import thalweg.plan.Plan;
import thalweg.route.PartialDate;
import thalweg.settings.TripFigure;

/** What own trips taught a plan as JSON; null where nobody asked. */
final class PaceJson {

    private static final int DECIMALS = 3;

    private PaceJson() {}

    static Json of(Plan plan) {
        return plan.pace()
                .<Json>map(pace -> Json.fields()
                        .put("used", Json.of(pace.factor().isPresent()))
                        .put("factor", pace.factor().map(PaceJson::number).orElse(Json.NOTHING))
                        .put(
                                "spread",
                                pace.spread(plan.figure(TripFigure.SPREAD))
                                        .map(PaceJson::number)
                                        .orElse(Json.NOTHING))
                        .put("legs", pace.legs())
                        .put("left_out", pace.leftOut())
                        .put(
                                "trips",
                                new Json.Items(pace.trips().stream()
                                        .<Json>map(PaceJson::trip)
                                        .toList()))
                        .done())
                .orElse(Json.NOTHING);
    }

    private static Json trip(PacedTrip paced) {
        return Json.fields()
                .put("trip", paced.trip().uid().text())
                .put("name", paced.trip().name())
                .putKnown("on", paced.trip().on().map(PartialDate::print).map(Json::of))
                .put("legs", paced.ratios().size())
                .put("left_out", paced.leftOut())
                .put("factor", paced.factor().map(PaceJson::number).orElse(Json.NOTHING))
                .done();
    }

    private static Json number(double value) {
        return Json.rounded(value, DECIMALS);
    }
}
