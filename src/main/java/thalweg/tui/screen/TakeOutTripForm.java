package thalweg.tui.screen;

import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.TripInCanyon;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A trip to take out of use.
 *
 * @param shown which
 */
record TakeOutTripForm(TripInCanyon shown) implements FormTask {

    @Override
    public String title(Surroundings around) {
        String name = shown.trip().name().isEmpty()
                ? around.say("trip.unnamed")
                : shown.trip().name();
        return around.say("form.take_out_trip.title", name, AboutLocal.name(shown.canyon(), around));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.TAKE_OUT_TRIP, shown.trip().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .name("reason", "form.take_out_trip.reason", "")
                .done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.TakeOutTrip(shown.trip(), filled.text("reason"));
    }
}
