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

    private final CanyonRecord whole;
    private final CanyonRecord record;
    private final Wording wording;
    private final LeaveOut leaveOut;
    private final Map<Uid, AnalysisFigures> figures;

    private SheetBuilder(CanyonRecord whole, SheetOptions options, Phrases phrases, Map<Uid, AnalysisFigures> figures) {
        this.whole = whole;
        this.leaveOut = new LeaveOut(options.contents());
        this.record = leaveOut.from(whole);
        this.wording = new Wording(phrases, options);
        this.figures = leaveOut.figures(figures);
    }

    /**
     * The sheet of a canyon.
     *
     * @param record the canyon with everything in it; what the options do not ask for is left out here
     * @param options units, day, program and contents of the sheet
     * @param phrases words of the domain and of sheets
     * @param figures by logbook entry; the latest analysis of a station that is missing here is said to be unreadable
     */
    public static Sheet build(
            CanyonRecord record, SheetOptions options, Phrases phrases, Map<Uid, AnalysisFigures> figures) {
        return new SheetBuilder(record, options, phrases, figures).build();
    }

    private Sheet build() {
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
        new CodesPart(wording).of(record).ifPresent(sections::add);
        sections.add(new FoundPart(wording).of(record));
        sections.add(about.origin(record.canyon()));
        return sheet(record.canyon().name(), record, sections);
    }

    /**
     * The card of one station: its place, its anchors, and what is known of them.
     *
     * @param place with that station alone
     * @param options units, day, program and contents of the card
     * @param phrases words of the domain and of sheets
     * @param figures by logbook entry, as for the whole sheet
     */
    public static Sheet card(
            CanyonRecord record,
            LineRecord place,
            SheetOptions options,
            Phrases phrases,
            Map<Uid, AnalysisFigures> figures) {
        return new SheetBuilder(record, options, phrases, figures).card(place);
    }

    private Sheet card(LineRecord place) {
        LineRecord shown = leaveOut.place(place);
        CanyonRecord alone = new CanyonRecord(record.canyon(), List.of(shown), record.rounds());
        String station = shown.stations().get(0).station().name();
        return sheet(
                wording.say("sheet.card", station, record.canyon().name()),
                alone,
                List.of(
                        new PlacePart(wording, figures).of(shown),
                        new FoundPart(wording).of(alone),
                        new AboutPart(wording).origin(record.canyon())));
    }

    /**
     * What of a sheet is needed in the canyon, few words a station.
     *
     * @param record the canyon with everything in it
     * @param options units, day, program and contents of the sheet
     * @param phrases words of the domain and of sheets
     * @param figures by logbook entry, as for the whole sheet
     */
    public static Sheet pocket(
            CanyonRecord record, SheetOptions options, Phrases phrases, Map<Uid, AnalysisFigures> figures) {
        return new SheetBuilder(record, options, phrases, figures).pocket();
    }

    private Sheet pocket() {
        PocketPart pocket = new PocketPart(wording, figures);
        List<Section> sections = new ArrayList<>();
        sections.add(new AboutPart(wording).help(record.canyon()));
        sections.add(new GlancePart(wording).inBrief(record));
        record.line().forEach(place -> sections.add(pocket.of(place)));
        sections.add(new FoundPart(wording).of(record));
        sections.add(pocket.leftOut(record.canyon()));
        return sheet(record.canyon().name(), record, sections);
    }

    private Sheet sheet(String title, CanyonRecord shown, List<Section> sections) {
        List<Section> all = new ArrayList<>();
        wording.options().changes().map(new ChangesPart(wording)::of).ifPresent(all::add);
        wording.options()
                .trip()
                .map(plan -> new TripPart(wording).of(plan, shown))
                .ifPresent(all::add);
        all.addAll(sections);
        Sheet sheet = new Sheet(
                wording.say("sheet.language"),
                title,
                new HeadPart(wording).of(shown, whole.line().size()),
                all,
                wording.labelled("", ""),
                footer(title));
        return Reword.of(sheet, whole, wording.options().contents(), wording.phrases());
    }

    private String footer(String title) {
        String day = wording.options().asOf().toString();
        String numbered = wording.options()
                .number()
                .map(number -> wording.say("sheet.footer.number", day, number.print()))
                .orElse(day);
        String marked =
                wording.options().contents().privateNotes() ? wording.say("sheet.footer.private", numbered) : numbered;
        String name = Width.cut(title, FOOTER_NAME - (numbered.length() - day.length()));
        return record.canyon().invented()
                ? wording.say("sheet.footer.invented", name, marked, wording.say("invented"))
                : wording.say("sheet.footer", name, marked);
    }
}
