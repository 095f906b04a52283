package thalweg.service;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.SheetNumber;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.settings.Settings;
import thalweg.sheet.AnalysisFigures;
import thalweg.sheet.LeaveOut;
import thalweg.sheet.Paper;
import thalweg.sheet.Sheet;
import thalweg.sheet.SheetBuilder;
import thalweg.sheet.SheetChanges;
import thalweg.sheet.SheetOptions;
import thalweg.sheet.Stretch;
import thalweg.sheet.TripPlan;
import thalweg.sheet.html.HtmlSheet;
import thalweg.sheet.markdown.MarkdownSheet;
import thalweg.sheet.pdf.PdfSheet;
import thalweg.sheet.text.TextSheet;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Makes the sheet of a canyon to hand out. */
public final class MakeSheet {

    /** The forms a sheet can take. */
    public enum Format {
        /** One HTML file, for paper and phones. */
        HTML("html"),
        /** Plain text in 72 columns. */
        TEXT("txt"),
        /** Markdown with tables, for notes and pages. */
        MARKDOWN("md"),
        /** Pages to print, tagged for those who have them read aloud. */
        PDF("pdf");

        private final String ending;

        Format(String ending) {
            this.ending = ending;
        }

        /** How the names of such files end. */
        public String ending() {
            return ending;
        }
    }

    private final Session session;
    private final Phrases phrases;
    private final String program;
    private final Settings settings;

    /** By the standard figures. */
    public MakeSheet(Session session, Phrases phrases, String program) {
        this(session, phrases, program, new Settings(List.of()));
    }

    /**
     * @param session whose day the sheet is made on
     * @param phrases the language of the sheet
     * @param program version of this program
     * @param settings whose figures say what is due
     */
    public MakeSheet(Session session, Phrases phrases, String program, Settings settings) {
        this.settings = settings;
        this.session = session;
        this.phrases = phrases;
        this.program = program;
    }

    /**
     * The file of a sheet.
     *
     * @throws InputException when the station is no longer there, the part of the line that is asked for is not on it, or a
     *     font of the person's own cannot be used
     */
    public byte[] of(CanyonRecord canyon, SheetOrder order) {
        return of(canyon, order, SheetOptions.usual(order.units(), session.today(), program));
    }

    /** The same with the number under which it is given out. */
    public byte[] numbered(CanyonRecord canyon, SheetOrder order, SheetNumber number) {
        return of(
                canyon,
                order,
                SheetOptions.usual(order.units(), session.today(), program).numbered(number));
    }

    /**
     * A sheet to look at before it is written; without a number.
     *
     * @param text what it says, as plain text whatever its format
     * @param bytes how long the file would be
     */
    public record Look(String text, int bytes) {}

    /** The same sheet as {@link #of}, to look at. */
    public Look look(CanyonRecord canyon, SheetOrder order) {
        Sheet sheet = sheetOf(canyon, order, SheetOptions.usual(order.units(), session.today(), program));
        return new Look(TextSheet.render(sheet), rendered(sheet, order).length);
    }

    private byte[] of(CanyonRecord canyon, SheetOrder order, SheetOptions options) {
        return rendered(sheetOf(canyon, order, options), order);
    }

    private byte[] rendered(Sheet sheet, SheetOrder order) {
        return switch (order.format()) {
            case HTML -> utf8(HtmlSheet.render(sheet));
            case TEXT -> utf8(TextSheet.render(sheet));
            case MARKDOWN -> utf8(MarkdownSheet.render(sheet));
            case PDF -> PdfSheet.render(sheet, order.paper(), OwnFonts.in(order.fonts()), phrases);
        };
    }

    private Sheet sheetOf(CanyonRecord canyon, SheetOrder order, SheetOptions options) {
        SheetOptions chosen = options.by(settings).holding(order.contents(), privateNotes(canyon, order));
        refuseOutside(canyon, order);
        Optional<SheetChanges> changes =
                order.since().map(earlier -> new ChangesSince(session, phrases).of(canyon, order, earlier));
        Optional<TripPlan> trip = order.trip().map(uid -> plan(canyon, order, uid));
        return sheet(canyon, order, chosen.since(changes).forTrip(trip));
    }

    private Map<Uid, String> privateNotes(CanyonRecord canyon, SheetOrder order) {
        if (!order.contents().privateNotes()) {
            return Map.of();
        }
        LocalRecord local = new FindRecord(session).local(canyon.canyon().uid());
        Map<Uid, String> notes = new LinkedHashMap<>();
        local.notes()
                .forEach(note ->
                        notes.put(note.about(), local.noteAbout(note.about()).orElse("")));
        return notes;
    }

    private TripPlan plan(CanyonRecord canyon, SheetOrder order, Uid uid) {
        if (order.station().isPresent()) {
            throw new InputException(
                    Sentence.of("The card of a station has no timetable; leave out the station or the trip."));
        }
        Trip trip = session.local()
                .trip(uid)
                .map(TripInCanyon::trip)
                .orElseThrow(() -> new InputException(
                        Sentence.of("There is no trip with the id {0}; `trips` lists them.", uid.text())));
        if (!trip.canyon().equals(canyon.canyon().uid())) {
            throw new InputException(Sentence.of(
                    "That trip goes to another canyon than {0}.",
                    canyon.canyon().name()));
        }
        return new TripPlan(trip, new PlanTrip(session, settings).of(trip));
    }

    private static void refuseOutside(CanyonRecord canyon, SheetOrder order) {
        int places = canyon.line().size();
        Optional<Stretch> outside = order.contents().stretch().filter(stretch -> stretch.to() > places);
        if (outside.isPresent()) {
            throw new InputException(
                    places == 0
                            ? Sentence.of(
                                    "The canyon {0} has no place on its line yet.",
                                    canyon.canyon().name())
                            : Sentence.of(
                                    "The part {0} ends behind the last place of {1}, which has the number {2}.",
                                    outside.get().print(), canyon.canyon().name(), places));
        }
        if (order.contents().stretch().isPresent() && order.station().isPresent()) {
            throw new InputException(
                    Sentence.of("The card of a station is no part of the line; leave out the station or the part."));
        }
    }

    private Sheet sheet(CanyonRecord canyon, SheetOrder order, SheetOptions options) {
        if (order.station().isPresent()) {
            LineRecord alone = alone(canyon, order.station().get());
            return SheetBuilder.card(canyon, alone, options, phrases, figures(alone.stations(), options.units()));
        }
        Map<Uid, AnalysisFigures> figures =
                figures(new LeaveOut(order.contents()).from(canyon).stations(), options.units());
        return order.format() == Format.PDF && order.paper() == Paper.POCKET
                ? SheetBuilder.pocket(canyon, options, phrases, figures)
                : SheetBuilder.build(canyon, options, phrases, figures);
    }

    /** The place of a station with that station alone. */
    private static LineRecord alone(CanyonRecord canyon, Uid station) {
        return canyon.placeOf(station)
                .orElseThrow(
                        () -> new InputException(Sentence.of("This station is no longer in the database; go back.")))
                .alone(station);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private Map<Uid, AnalysisFigures> figures(List<StationRecord> stations, UnitSystem units) {
        AnalysisView view = new AnalysisView(phrases, units, session.answers());
        Map<Uid, AnalysisFigures> figures = new LinkedHashMap<>();
        for (StationRecord station : stations) {
            station.analyses()
                    .forEach(entry -> view.of(station, entry).ifPresent(known -> figures.put(entry.uid(), known)));
        }
        return figures;
    }
}
