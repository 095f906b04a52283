package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.text.Phrases;
import thalweg.text.Width;

/** Turns the record of a canyon into what a sheet says about it. */
public final class SheetBuilder {

    /** The foot of a page has one line for the name, the day and what else must not be missed [cells]. */
    private static final int FOOTER_NAME = 40;

    private SheetBuilder() {}

    /**
     * The sheet of a canyon.
     *
     * @param record the canyon with everything in it
     * @param options units, day and program of the sheet
     * @param phrases words of the domain and of sheets
     * @param figures by logbook entry; the latest analysis of a station that is missing here is said to be unreadable
     */
    public static Sheet build(
            CanyonRecord record, SheetOptions options, Phrases phrases, Map<Uid, AnalysisFigures> figures) {
        Wording wording = new Wording(phrases, options);
        AboutPart about = new AboutPart(wording);
        PlacePart places = new PlacePart(wording, figures);
        List<Section> sections = new ArrayList<>();
        sections.add(about.emergency(record.canyon()));
        sections.add(new GlancePart(wording).of(record));
        sections.add(about.about(record.canyon()));
        sections.add(new LinePart(wording).of(record));
        new ProfilePart(wording).of(record).ifPresent(sections::add);
        record.line().stream()
                .filter(place -> !place.stations().isEmpty())
                .forEach(place -> sections.add(places.of(place)));
        sections.add(about.origin(record.canyon()));
        return new Sheet(
                phrases.say("sheet.language"),
                record.canyon().name(),
                new HeadPart(wording).of(record),
                sections,
                phrases.labelled("", ""),
                footer(record, wording));
    }

    /**
     * The card of one station: its place, its anchors, and what is known of them.
     *
     * @param place with that station alone
     * @param options units, day and program of the card
     * @param phrases words of the domain and of sheets
     * @param figures by logbook entry, as for the whole sheet
     */
    public static Sheet card(
            CanyonRecord record,
            LineRecord place,
            SheetOptions options,
            Phrases phrases,
            Map<Uid, AnalysisFigures> figures) {
        Wording wording = new Wording(phrases, options);
        CanyonRecord alone = new CanyonRecord(record.canyon(), List.of(place), record.rounds());
        String station = place.stations().get(0).station().name();
        return new Sheet(
                phrases.say("sheet.language"),
                wording.say("sheet.card", station, record.canyon().name()),
                new HeadPart(wording).of(alone),
                List.of(new PlacePart(wording, figures).of(place), new AboutPart(wording).origin(record.canyon())),
                phrases.labelled("", ""),
                footer(wording.say("sheet.card", station, record.canyon().name()), record, wording));
    }

    /**
     * What of a sheet is needed in the canyon, few words a station.
     *
     * @param record the canyon with everything in it
     * @param options units, day and program of the sheet
     * @param phrases words of the domain and of sheets
     * @param figures by logbook entry, as for the whole sheet
     */
    public static Sheet pocket(
            CanyonRecord record, SheetOptions options, Phrases phrases, Map<Uid, AnalysisFigures> figures) {
        Wording wording = new Wording(phrases, options);
        PocketPart pocket = new PocketPart(wording, figures);
        List<Section> sections = new ArrayList<>();
        sections.add(new AboutPart(wording).help(record.canyon()));
        sections.add(new GlancePart(wording).inBrief(record));
        record.line().forEach(place -> sections.add(pocket.of(place)));
        sections.add(pocket.leftOut(record.canyon()));
        return new Sheet(
                phrases.say("sheet.language"),
                record.canyon().name(),
                new HeadPart(wording).of(record),
                sections,
                phrases.labelled("", ""),
                footer(record, wording));
    }

    private static String footer(CanyonRecord record, Wording wording) {
        return footer(record.canyon().name(), record, wording);
    }

    private static String footer(String title, CanyonRecord record, Wording wording) {
        String day = wording.options().asOf().toString();
        String numbered = wording.options()
                .number()
                .map(number -> wording.say("sheet.footer.number", day, number))
                .orElse(day);
        String name = Width.cut(title, FOOTER_NAME - (numbered.length() - day.length()));
        return record.canyon().invented()
                ? wording.say("sheet.footer.invented", name, numbered, wording.say("invented"))
                : wording.say("sheet.footer", name, numbered);
    }
}
