package thalweg.tui.screen;

import java.util.Optional;
import java.util.function.Function;
import thalweg.draft.DraftKey;
import thalweg.logbook.NotedTime;
import thalweg.logbook.TripText;
import thalweg.logbook.TripTime;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * When a party reached and left one place, typed afterwards or put right. Two short fields are typed again sooner than a draft
 * of them is found.
 *
 * @param go which trip and place
 */
record TripTimesForm(Go.TypeTimes go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("form.times.title", go.label());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.empty();
    }

    private Optional<Integer> before(Function<TripTime, Optional<Integer>> which) {
        return go.trip().timeAt(go.place()).flatMap(which);
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .value("reached", "form.times.reached", print(before(TripTime::reached)), text -> read(text, around))
                .value("left", "form.times.left", print(before(TripTime::left)), text -> read(text, around))
                .done());
    }

    private static String print(Optional<Integer> minutes) {
        return minutes.map(TripText::printTime).orElse("");
    }

    private static NotedTime read(String text, Surroundings around) {
        return NotedTime.parse(text, around.say("form.times.now"));
    }

    @Override
    public Effect ask(Filled filled, Surroundings around) {
        return new Ask.NoteTimes(
                go.trip(), go.place(), read(filled.text("reached"), around), read(filled.text("left"), around));
    }
}
