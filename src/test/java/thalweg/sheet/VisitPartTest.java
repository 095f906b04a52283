package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Hash;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Photo;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Withdrawal;
import thalweg.route.PartialDate;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.units.UnitSystem;

/** What a sheet says of inspections that have photos, and of those that no longer count. */
final class VisitPartTest {

    private final RandomRecords random = new RandomRecords(3, Fill.NOTHING);

    private Entry<Inspection> entry(Uid part, String on, List<Photo> photos, List<Withdrawal> withdrawals) {
        Inspection inspection = new Inspection(
                part,
                PartialDate.parse(on),
                "Ann",
                Optional.of(Condition.WORN),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                Optional.empty(),
                photos);
        return new Entry<>(
                random.uid(), inspection, "Ann", "2026-11-25T10:00:00Z", Optional.empty(), withdrawals, false);
    }

    private List<String> texts() {
        Uid canyon = random.uid();
        Uid obstacle = random.uid();
        Uid station = random.uid();
        Uid anchor = random.uid();
        Uid part = random.uid();
        String order = OrderKey.between("", "");
        Photo bare = new Photo("IMG 1.jpg", Hash.of("one"), "");
        Photo captioned = new Photo("IMG 2.jpg", Hash.of("two"), "groove in the ring");
        Withdrawal withdrawal =
                new Withdrawal(random.uid(), "another canyon", "Ann", "2026-11-25T11:00:00Z", List.of());
        PartRecord record = PartRecord.of(
                random.things().part(part, anchor, order),
                List.of(
                        entry(part, "2026-06", List.of(bare, captioned), List.of()),
                        entry(part, "2026-10", List.of(), List.of(withdrawal))));
        StationRecord at = new StationRecord(
                random.things().station(station, obstacle, order),
                List.of(new AnchorRecord(random.things().anchor(anchor, station, order), List.of(record))),
                List.of(),
                List.of());
        LineRecord place = new LineRecord(1, random.things().obstacle(obstacle, canyon, order), List.of(at));
        Sheet sheet = SheetBuilder.build(
                new CanyonRecord(random.things().canyon(canyon), List.of(place)),
                SheetOptions.usual(UnitSystem.METRIC, SampleSheets.TODAY, "0.1.0"),
                SheetPhrases.ENGLISH,
                Map.of());
        return SheetTexts.sections(sheet)
                .flatMap(section -> SheetTexts.of(section.blocks()).stream())
                .toList();
    }

    @Test
    void photosAreNamedBesideTheInspection() {
        assertThat(texts()).contains("photo IMG 1.jpg", "photo IMG 2.jpg: groove in the ring");
    }

    @Test
    void anEntryThatWasWithdrawnIsNotOnTheSheetAndAMonthSaysAtLeast() {
        assertThat(texts())
                .anyMatch(text -> text.contains("2026-06, at least 4 months ago"))
                .noneMatch(text -> text.contains("2026-10"))
                .noneMatch(text -> text.contains("another canyon"));
    }

    /** The tables show the last three days; the rest is told in the picture. */
    @Test
    void everyLookAtEveryPartIsToldOverTheYears() {
        List<String> told = SheetTexts.sections(SampleSheets.full())
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Picture.class::isInstance)
                .map(Block.Picture.class::cast)
                .filter(picture -> picture.id().endsWith("-years"))
                .flatMap(picture -> picture.plain().stream())
                .toList();

        assertThat(told).isNotEmpty();
        for (StationRecord station : new FullCanyon().record().stations()) {
            for (PartRecord part : station.parts()) {
                for (Inspection look : part.counting()) {
                    assertThat(told)
                            .as(part.part().label())
                            .anyMatch(line -> line.startsWith(part.part().label() + ": ")
                                    && line.contains(look.on().print()));
                }
            }
        }
    }
}
