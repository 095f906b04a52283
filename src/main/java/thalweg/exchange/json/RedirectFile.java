package thalweg.exchange.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.rig.RedirectDraft;

/** Reads and writes over what the rope of a rig runs. */
final class RedirectFile {

    private static final int LONGEST_NAME = 120;

    private RedirectFile() {}

    static RedirectDraft read(FieldReader in) {
        RedirectDraft redirect = new RedirectDraft(
                in.textOrEmpty("name", LONGEST_NAME), in.reals("at").orElse(List.of()), in.real("strength_kN"));
        in.refuseUnasked();
        return redirect;
    }

    static Json write(RedirectDraft redirect) {
        return Json.fields()
                .put("name", redirect.name())
                .put(
                        "at",
                        new Json.Items(redirect.at().stream()
                                .map(metres -> Json.rounded(metres, 6))
                                .toList()))
                .putKnown("strength_kN", number(redirect.strengthKilonewtons()))
                .done();
    }

    private static Optional<Json> number(OptionalDouble value) {
        return value.isPresent() ? Optional.of(Json.rounded(value.getAsDouble(), 6)) : Optional.empty();
    }
}
