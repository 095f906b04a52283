package thalweg.cli;

import java.util.Locale;
import java.util.Optional;
import thalweg.json.Json;
import thalweg.plan.Bring;
import thalweg.plan.Plan;
import thalweg.settings.TripFigure;

/** What a trip is to bring as JSON, and the figures that a plan went by. */
final class BringJson {

    private static final int DECIMALS = 3;

    private BringJson() {}

    static Json of(Bring bring) {
        return Json.fields()
                .put("webbing_m", Json.rounded(bring.webbing().metres(), DECIMALS))
                .put("cord_m", Json.rounded(bring.cord().metres(), DECIMALS))
                .put("links", bring.links())
                .put(
                        "items",
                        new Json.Items(bring.items().stream()
                                .<Json>map(BringJson::item)
                                .toList()))
                .put(
                        "not_replaced",
                        new Json.Items(bring.notReplaced().stream()
                                .<Json>map(BringJson::part)
                                .toList()))
                .put("not_entered", Json.texts(bring.notEntered()))
                .done();
    }

    static Json figures(Plan plan) {
        Json.Fields fields = Json.fields().done();
        for (TripFigure figure : TripFigure.values()) {
            fields = fields.with(figure.word(), Json.rounded(plan.figure(figure), DECIMALS));
        }
        return fields;
    }

    private static Json item(Bring.Item item) {
        return Json.fields()
                .put("kind", word(item.kind()))
                .put(
                        "length_m",
                        item.length()
                                .<Json>map(length -> Json.rounded(length.metres(), DECIMALS))
                                .orElse(Json.NOTHING))
                .put("links", item.links())
                .put("basis", word(item.basis()))
                .put("old", Json.of(item.old()))
                .put("girth_unknown", Json.texts(item.roundUnknown()))
                .put(
                        "parts",
                        new Json.Items(
                                item.parts().stream().<Json>map(BringJson::part).toList()))
                .done();
    }

    private static Json part(Bring.Needy part) {
        return Json.fields()
                .put("station", part.station())
                .put("part", part.label())
                .put("found", text(part.found().map(BringJson::word)))
                .put("due", text(part.due().map(due -> word(due.reason()))))
                .done();
    }

    private static Json text(Optional<String> value) {
        return value.<Json>map(Json::of).orElse(Json.NOTHING);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
