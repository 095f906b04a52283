package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.SheetNumber;
import thalweg.logbook.Trip;
import thalweg.route.PartialDate;
import thalweg.sheet.SheetContents;
import thalweg.sheet.Stretch;
import thalweg.text.Language;
import thalweg.text.Slug;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.units.UnitSystem;

/**
 * A sheet to write to a file.
 *
 * @param go of what
 */
record SheetForm(Go.WriteSheet go) implements FormTask {

    private static final String YES = "yes";

    /** Whoever still holds an older one asks by its number, with the command. */
    private static final int MOST_EARLIER = 20;

    @Override
    public String title(Surroundings around) {
        return around.say(go.station().isPresent() ? "sheet_form.card" : "sheet_form.title", go.name());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.SHEET, go.about()));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around)
                .word("format", "sheet_form.format", "sheet_format", Ask.SheetFormat.class, Ask.SheetFormat.HTML)
                .word("language", "sheet_form.language", "sheet_language", Language.class, spoken(around))
                .name("file", "sheet_form.file", Slug.of(go.name(), go.about().tail()));
        if (!around.readOnly()) {
            build.text("given_to", "sheet_form.given_to", "");
        }
        build.options(
                        "overwrite",
                        around.say("sheet_form.overwrite"),
                        List.of("no", YES),
                        List.of(around.say("sheet_form.no"), around.say("sheet_form.yes")),
                        "no")
                .word("units", "sheet_form.units", "units", UnitSystem.class, around.units());
        if (go.station().isEmpty()) {
            build.value("part", "sheet_form.part", "", Stretch::parse);
        }
        earlier(build, around);
        trips(build, around);
        return Form.of(ContentsFields.add(build, around)
                .options(
                        "private_notes",
                        around.say("sheet_form.private_notes"),
                        List.of("no", YES),
                        List.of(around.say("sheet_form.left_out"), around.say("sheet_form.shown_private")),
                        "no")
                .done());
    }

    /** The one of the screen, until another is chosen. */
    static Language spoken(Surroundings around) {
        return Language.of(around.say("sheet.language")).orElse(Language.EN);
    }

    @Override
    public Ask.WriteSheet ask(Filled filled, Surroundings around) {
        Ask.SheetFormat format = filled.word("format", Ask.SheetFormat.class).orElseThrow();
        String ending = switch (format) {
            case HTML -> ".html";
            case PDF_A4, PDF_LETTER, PDF_POCKET -> ".pdf";
            case TEXT -> ".txt";
            case MARKDOWN -> ".md";
        };
        String name = filled.text("file");
        String target = name.toLowerCase(Locale.ROOT).endsWith(ending) ? name : name + ending;
        return new Ask.WriteSheet(
                go.canyon(),
                go.station(),
                format,
                filled.word("language", Language.class).orElse(Language.EN),
                target,
                filled.text("overwrite").equals(YES),
                filled.word("units", UnitSystem.class).orElse(around.units()),
                around.settings(),
                around.readOnly() ? "" : filled.text("given_to"),
                contents(filled),
                since(filled),
                trips().isEmpty() ? Optional.empty() : Uid.parse(filled.text("trip")));
    }

    @Override
    public boolean looks() {
        return true;
    }

    @Override
    public Optional<Effect> look(Filled filled, Surroundings around) {
        return Optional.of(new Ask.LookAtSheet(ask(filled, around)));
    }

    @Override
    public Optional<Onward> onward(Told answer, Filled sent, Surroundings around) {
        return answer instanceof Told.SheetLookedAt looked
                ? Optional.of(new Onward(new Go.Read(title(around), AboutSheet.of(looked, around)), false))
                : Optional.empty();
    }

    private Optional<SheetNumber> since(Filled filled) {
        return earlier().isEmpty()
                ? Optional.empty()
                : Optional.of(filled.text("since"))
                        .filter(number -> !number.isEmpty())
                        .map(SheetNumber::parse);
    }

    /** The sheets of the canyon of which it is known what they were made from, the latest first. */
    private List<SheetGiven> earlier() {
        return go.local().countingSheets().stream()
                .map(Entry::content)
                .filter(sheet -> sheet.ledger().isPresent())
                .sorted(Comparator.comparing(SheetGiven::number).reversed())
                .limit(MOST_EARLIER)
                .toList();
    }

    /** One of them, since which changes are told; no field where there is none. */
    private void earlier(Build build, Surroundings around) {
        List<SheetGiven> sheets = earlier();
        if (sheets.isEmpty()) {
            return;
        }
        List<String> options = new ArrayList<>(List.of(""));
        List<String> labels = new ArrayList<>(List.of(around.say("sheet_form.since.none")));
        sheets.forEach(sheet -> {
            options.add(sheet.mark().print());
            labels.add(
                    sheet.to().isEmpty()
                            ? around.say(
                                    "sheet_form.since.of",
                                    sheet.number(),
                                    sheet.on().print())
                            : around.say(
                                    "sheet_form.since.given",
                                    sheet.number(),
                                    sheet.on().print(),
                                    sheet.to()));
        });
        build.options("since", around.say("sheet_form.since"), options, labels, "");
    }

    /** The trips to the canyon that are not called off; the card of a station is for none. */
    private List<Trip> trips() {
        return go.station().isPresent()
                ? List.of()
                : go.local().trips().stream()
                        .filter(trip -> trip.state() != Trip.State.CALLED_OFF)
                        .sorted(Trip.IN_TURN)
                        .toList();
    }

    /** One of them, whose plan the sheet has; no field where there is none. */
    private void trips(Build build, Surroundings around) {
        if (trips().isEmpty()) {
            return;
        }
        List<String> options = new ArrayList<>(List.of(""));
        List<String> labels = new ArrayList<>(List.of(around.say("sheet_form.trip.none")));
        for (Trip trip : trips()) {
            String day = trip.on().map(PartialDate::print).orElse(around.say("trips.no_day"));
            options.add(trip.uid().text());
            labels.add(trip.name().isEmpty() ? day : around.say("sheet_form.trip.named", day, trip.name()));
        }
        build.options(
                "trip",
                around.say("sheet_form.trip"),
                options,
                labels,
                go.trip().map(Uid::text).orElse(""));
    }

    private SheetContents contents(Filled filled) {
        Optional<Stretch> part =
                go.station().isEmpty() ? filled.value("part", Optional.empty(), Stretch::parse) : Optional.empty();
        SheetContents shown = ContentsFields.chosen(filled).of(part);
        return filled.text("private_notes").equals(YES) ? shown.withPrivateNotes() : shown;
    }
}
