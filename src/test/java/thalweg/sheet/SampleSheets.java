package thalweg.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.route.Canyon;
import thalweg.route.Prose;
import thalweg.route.Times;
import thalweg.units.UnitSystem;

/** Sheets of constructed canyons, for every output to render. */
public final class SampleSheets {

    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    static final SheetOptions USUAL = SheetOptions.usual(UnitSystem.METRIC, TODAY, "0.1.0");

    private SampleSheets() {}

    /** A canyon with everything. */
    public static Sheet full() {
        FullCanyon canyon = new FullCanyon();
        return SheetBuilder.build(canyon.record(), USUAL, SheetPhrases.ENGLISH, canyon.figures());
    }

    /** The same in feet and pounds. */
    public static Sheet imperial() {
        FullCanyon canyon = new FullCanyon();
        SheetOptions options = SheetOptions.usual(UnitSystem.IMPERIAL, TODAY, "0.1.0");
        return SheetBuilder.build(canyon.record(), options, SheetPhrases.ENGLISH, canyon.figures());
    }

    /** What of it goes into a pocket. */
    public static Sheet pocket() {
        FullCanyon canyon = new FullCanyon();
        return SheetBuilder.pocket(canyon.record(), USUAL, SheetPhrases.ENGLISH, canyon.figures());
    }

    /** The card of its first station. */
    public static Sheet card() {
        FullCanyon canyon = new FullCanyon();
        LineRecord place = canyon.record().line().stream()
                .filter(one -> !one.stations().isEmpty())
                .findFirst()
                .orElseThrow();
        LineRecord alone = new LineRecord(
                place.number(), place.obstacle(), place.stations().subList(0, 1));
        return SheetBuilder.card(canyon.record(), alone, USUAL, SheetPhrases.ENGLISH, canyon.figures());
    }

    /** A canyon of which nothing is known but its name. */
    public static Sheet bare() {
        return SheetBuilder.build(bareRecord(), USUAL, SheetPhrases.ENGLISH, Map.of());
    }

    static CanyonRecord bareRecord() {
        Canyon canyon = new Canyon(
                new Uid(new UUID(0x0193_0000_0000_7000L, 0x8000_0000_0000_0000L)),
                "Nameless Gully",
                List.of(),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.empty(),
                Prose.none(),
                false);
        return new CanyonRecord(canyon, List.of());
    }
}
