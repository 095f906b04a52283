package thalweg.service;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.StationRecord;
import thalweg.settings.Settings;
import thalweg.sheet.AnalysisFigures;
import thalweg.sheet.Sheet;
import thalweg.sheet.SheetBuilder;
import thalweg.sheet.SheetOptions;
import thalweg.sheet.html.HtmlSheet;
import thalweg.sheet.markdown.MarkdownSheet;
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
        MARKDOWN("md");

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

    /** The sheet of a canyon as text of that format. */
    public String of(CanyonRecord canyon, Format format, UnitSystem units) {
        return of(canyon, format, SheetOptions.usual(units, session.today(), program));
    }

    /** The same with the number under which it is given out. */
    public String numbered(CanyonRecord canyon, Format format, UnitSystem units, long number) {
        return of(
                canyon,
                format,
                SheetOptions.usual(units, session.today(), program).numbered(number));
    }

    private String of(CanyonRecord canyon, Format format, SheetOptions options) {
        Sheet sheet = SheetBuilder.build(canyon, options.by(settings), phrases, figures(canyon, options.units()));
        return switch (format) {
            case HTML -> HtmlSheet.render(sheet);
            case TEXT -> TextSheet.render(sheet);
            case MARKDOWN -> MarkdownSheet.render(sheet);
        };
    }

    private Map<Uid, AnalysisFigures> figures(CanyonRecord canyon, UnitSystem units) {
        AnalysisView view = new AnalysisView(phrases, units);
        Map<Uid, AnalysisFigures> figures = new LinkedHashMap<>();
        for (StationRecord station : canyon.stations()) {
            station.analyses()
                    .forEach(entry -> view.of(station, entry).ifPresent(known -> figures.put(entry.uid(), known)));
        }
        return figures;
    }
}
