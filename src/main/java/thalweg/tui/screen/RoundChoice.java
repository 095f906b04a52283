package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.Round;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.TextField;

/** The field of a form in which a recent round of the canyon is chosen, or none. */
final class RoundChoice {

    static final String KEY = "round";
    private static final String NONE = "";

    /** Older rounds are chosen by nobody who enters what was found. */
    private static final int MOST = 12;

    private RoundChoice() {}

    /**
     * Adds the field, where there is a round to choose.
     *
     * @param rounds that can be chosen, newest first
     * @param chosen at first
     */
    static void add(Build build, List<Entry<Round>> rounds, Optional<Uid> chosen, Surroundings around) {
        List<String> options = new ArrayList<>(List.of(NONE));
        List<String> labels = new ArrayList<>(List.of(around.say("form.visit.no_round")));
        rounds.stream().limit(MOST).forEach(round -> {
            options.add(round.uid().text());
            labels.add(label(round.content(), around));
        });
        chosen.map(Uid::text).filter(uid -> !options.contains(uid)).ifPresent(uid -> {
            options.add(uid);
            labels.add(rounds.stream()
                    .filter(round -> round.uid().text().equals(uid))
                    .findFirst()
                    .map(round -> label(round.content(), around))
                    .orElse(around.say("form.visit.other_round")));
        });
        if (options.size() > 1) {
            build.options(
                    KEY,
                    around.say("form.visit.round"),
                    options,
                    labels,
                    chosen.map(Uid::text).orElse(NONE));
        }
    }

    /** "2026-06-14, Ada, water low". */
    static String label(Round round, Surroundings around) {
        return Stream.of(
                        round.on().print(),
                        round.by(),
                        round.water()
                                .map(level -> around.say("about.water", Looks.word(around, "water", level)))
                                .orElse(""))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** The form with date, name and water of a round that was just chosen; they can still be changed. */
    static Form filled(Form before, Form after, List<Entry<Round>> rounds) {
        if (!has(after) || before.value(KEY).equals(after.value(KEY))) {
            return after;
        }
        return rounds.stream()
                .filter(round -> round.uid().text().equals(after.value(KEY)))
                .findFirst()
                .map(round -> filled(after, round.content()))
                .orElse(after);
    }

    private static Form filled(Form form, Round round) {
        Form filled = form;
        for (Field field : form.fields()) {
            if (field.input() instanceof Field.Input.Typed typed
                    && (field.key().equals("on") || field.key().equals("by"))) {
                String text = field.key().equals("on") ? round.on().print() : round.by();
                int longest = typed.field().longest();
                filled = filled.with(field.key(), new Field.Input.Typed(TextField.of(text, longest)));
            } else if (field.input() instanceof Field.Input.Chosen chosen
                    && field.key().equals("water")) {
                String water = round.water()
                        .map(level -> level.name().toLowerCase(Locale.ROOT))
                        .orElse("");
                int at = Math.max(0, chosen.options().indexOf(water));
                filled = filled.with(
                        "water", new Field.Input.Chosen(chosen.options(), chosen.labels(), at, chosen.movesOn()));
            }
        }
        return filled;
    }

    private static boolean has(Form form) {
        return form.fields().stream().anyMatch(field -> field.key().equals(KEY));
    }

    /** The round that was chosen. */
    static Optional<Uid> chosen(Filled filled) {
        return has(filled.last()) ? Uid.parse(filled.last().value(KEY)) : Optional.empty();
    }
}
