package thalweg.sheet;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.LineRecord;
import thalweg.logbook.NoteText;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.SheetNumber;
import thalweg.logbook.StationRecord;
import thalweg.route.AnchorRole;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Side;
import thalweg.route.Station;
import thalweg.route.StationText;
import thalweg.route.Times;

/**
 * An invented canyon from a seed, with a word of its own in every text, so that a test can say which text is missing
 * from a sheet.
 */
public final class RandomCanyon {

    private final Random random;
    private final Marks marks;
    private final Things things = new Things();
    private final RandomAnchors anchors;
    private final Map<Uid, AnalysisFigures> figures = new HashMap<>();
    private final CanyonRecord record;

    /**
     * @param seed the same gives the same
     * @param dress what is written around each word
     */
    public RandomCanyon(long seed, UnaryOperator<String> dress) {
        this.random = new Random(seed);
        this.marks = new Marks(dress);
        this.anchors = new RandomAnchors(random, marks, things);
        List<LineRecord> line = IntStream.rangeClosed(1, 2 + random.nextInt(4))
                .mapToObj(this::place)
                .toList();
        this.record = new CanyonRecord(canyon(), line);
    }

    /** The sheet about it. */
    public Sheet sheet() {
        return SheetBuilder.build(record, SampleSheets.USUAL, SheetPhrases.ENGLISH, figures);
    }

    /** The sheet about it as it is given out under that number. */
    Sheet numbered(long number) {
        return SheetBuilder.build(
                record,
                SampleSheets.USUAL.numbered(new SheetNumber(number, Optional.of("4f9ac1"))),
                SheetPhrases.ENGLISH,
                figures);
    }

    /** What of it goes into a pocket. */
    public Sheet pocket() {
        return SheetBuilder.pocket(record, SampleSheets.USUAL, SheetPhrases.ENGLISH, figures);
    }

    /** The record about which the sheets are. */
    public CanyonRecord record() {
        return record;
    }

    /** The words that a sheet must have. */
    public List<String> expected() {
        return marks.expected();
    }

    private Canyon canyon() {
        return new Canyon(
                things.uid(),
                marks.shown(),
                List.of(marks.shown(), marks.shown()),
                marks.shown(),
                marks.shown(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.empty(),
                new Prose<>(prose(CanyonText.class, true)),
                random.nextBoolean());
    }

    private LineRecord place(int number) {
        ObstacleKind kind = pick(List.of(ObstacleKind.values()));
        StationRecord[] stations =
                Stream.generate(this::station).limit(random.nextInt(3)).toArray(StationRecord[]::new);
        return things.place(number, kind, marks.shown(), number * 40 + " m", "12 m", marks.shown(), stations);
    }

    private StationRecord station() {
        List<String> days =
                List.of("2026-09", "2026-08-30", "2025", "2024-11-02", "2023").subList(0, 1 + random.nextInt(5));
        Station station =
                things.station(marks.shown(), Optional.of(Side.RIGHT), "15 m", prose(StationText.class, true));
        List<AnchorRecord> here = Stream.of(AnchorRole.values())
                .filter(role -> random.nextBoolean())
                .map(role -> anchors.anchor(role, days))
                .toList();
        return new StationRecord(
                station,
                here,
                List.of(
                        things.note("2026-09-12", marks.shown(), prose(NoteText.class, true)),
                        things.note("2025", marks.shownIf(false), prose(NoteText.class, false))),
                List.of(analysis(true), analysis(false)));
    }

    private Entry<RigAnalysis> analysis(boolean latest) {
        Entry<RigAnalysis> entry = things.entry(new RigAnalysis(
                things.uid(), PartialDate.parse("2026"), "", "0.1.0", "{}", "{}", new InventoryFingerprint(Map.of())));
        figures.put(entry.uid(), RandomFigures.of(entry.uid(), latest, marks));
        return entry;
    }

    private <K extends Enum<K>> Map<K, String> prose(Class<K> headings, boolean shown) {
        Map<K, String> texts = new EnumMap<>(headings);
        for (K heading : headings.getEnumConstants()) {
            if (texts.isEmpty() || random.nextInt(3) > 0) {
                texts.put(heading, marks.shownIf(shown) + "\n" + marks.shownIf(shown));
            }
        }
        return texts;
    }

    private <T> T pick(List<T> among) {
        return among.get(random.nextInt(among.size()));
    }
}
