package thalweg.service;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thalweg.testing.SampleRecords.CANYONS;
import static thalweg.testing.SampleRecords.PARCELS;
import static thalweg.testing.SampleRecords.analyses;
import static thalweg.testing.SampleRecords.bytes;
import static thalweg.testing.SampleRecords.inspections;
import static thalweg.testing.SampleRecords.notes;
import static thalweg.testing.SampleRecords.parts;
import static thalweg.testing.SampleRecords.places;
import static thalweg.testing.SampleRecords.stations;

import java.lang.Character.UnicodeScript;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import thalweg.fault.InputException;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Finding;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.NoteText;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.Work;
import thalweg.place.Position;
import thalweg.route.CanyonText;
import thalweg.route.ObstacleKind;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;

/** What there is to practise on in the sample data, as the program has it after taking it in. */
final class SampleScopeTest {

    private static final Session SESSION = Session.inMemory(Desk.CLOCK, "ada");

    /**
     * Parts of the oceans without an island, south, west, north and east [°]. Source: any atlas; nearest to them are the
     * Azores and Bermuda, Midway and the Aleutians, Easter Island and the Chatham Islands, Amsterdam Island and the
     * Cocos Islands, Gough Island and South Georgia, all of them outside.
     */
    private static final List<List<Integer>> OPEN_OCEAN = List.of(
            List.of(30, -46, 36, -38),
            List.of(35, -170, 45, -140),
            List.of(-55, -140, -35, -100),
            List.of(-36, 84, -30, 105),
            List.of(-50, -30, -42, -15));

    @BeforeAll
    static void takeIn() {
        ImportRecords records = new ImportRecords(SESSION);
        ImportRecords.Preview preview = records.preview("sample data", bytes());
        assertThat(preview.findings()).isEmpty();
        records.accept(preview.plan());
    }

    @AfterAll
    static void close() {
        SESSION.close();
    }

    @Test
    void thereIsEnoughOfEverything() {
        assertThat(new ListCanyons(SESSION).count()).isEqualTo(CANYONS.size()).isGreaterThanOrEqualTo(6);
        assertThat(stations()).hasSizeGreaterThanOrEqualTo(45);
        assertThat(parts()).hasSizeGreaterThanOrEqualTo(120);
        assertThat(inspections()).hasSizeGreaterThanOrEqualTo(250);
        assertThat(analyses()).hasSizeGreaterThanOrEqualTo(15);
    }

    @Test
    void whatBecomesOfRecordsIsThereToBeSeen() {
        assertThat(PARCELS.stream().flatMap(parcel -> parcel.local().trips().stream()))
                .extracting(Trip::state)
                .contains(Trip.State.PLANNED, Trip.State.DONE);
        assertThat(PARCELS.stream().flatMap(parcel -> parcel.local().notes().stream()))
                .isNotEmpty();
        assertThat(PARCELS.stream().flatMap(parcel -> parcel.local().sheets().stream()))
                .isNotEmpty();
        assertThat(CANYONS.stream().flatMap(canyon -> canyon.rounds().stream())).hasSizeGreaterThanOrEqualTo(2);
        assertThat(inspections().filter(inspection -> inspection.round().isPresent()))
                .hasSizeGreaterThan(50);
        assertThat(inspections().flatMap(inspection -> inspection.photos().stream()))
                .allMatch(photo -> photo.caption().contains("Invented"))
                .isNotEmpty();
        assertThat(parts().flatMap(part -> part.inspections().stream()))
                .anyMatch(Entry::corrected)
                .anyMatch(entry -> entry.withdrawal().isPresent());
    }

    @Test
    void theProgramGivesBackWhatTheFileHolds() {
        List<CanyonRecord> back = CANYONS.stream()
                .map(record ->
                        new FindRecord(SESSION).byId(record.canyon().uid()).orElseThrow())
                .toList();

        assertThat(back.stream().map(SampleScopeTest::withoutAnalyses))
                .containsExactlyElementsOf(
                        CANYONS.stream().map(SampleScopeTest::withoutAnalyses).toList());
        assertThat(back.stream()
                        .flatMap(record -> record.stations().stream())
                        .flatMap(station -> station.analyses().stream()))
                .containsExactlyInAnyOrderElementsOf(analyses().toList());
    }

    /** Several analyses of one day have no order among themselves. */
    private static CanyonRecord withoutAnalyses(CanyonRecord record) {
        return new CanyonRecord(
                record.canyon(),
                record.line().stream()
                        .map(place -> new LineRecord(
                                place.number(),
                                place.obstacle(),
                                place.stations().stream()
                                        .map(station -> new StationRecord(
                                                station.station(), station.anchors(), station.notes(), List.of()))
                                        .toList()))
                        .toList());
    }

    @Test
    void itStaysSmallEnoughForAFirstStart() {
        assertThat(bytes()).hasSizeLessThan(640_000);
    }

    @Test
    void everyRowOfTheListSaysThatItIsInvented() {
        assertThat(new ListCanyons(SESSION).found(Finding.of("")).rows())
                .isNotEmpty()
                .allMatch(CanyonRow::invented);
    }

    @Test
    void positionsLieInTheOpenOceanAndTheNotesSaySo() {
        assertThat(CANYONS)
                .allMatch(record -> record.canyon()
                        .prose()
                        .under(CanyonText.NOTES)
                        .orElseThrow()
                        .contains("open ocean"));
        assertThat(CANYONS.stream()
                        .flatMap(record -> record.canyon().position().stream())
                        .toList())
                .hasSizeGreaterThanOrEqualTo(6)
                .allMatch(position -> OPEN_OCEAN.stream().anyMatch(box -> isIn(box, position)));
    }

    private static boolean isIn(List<Integer> box, Position position) {
        double latitude = position.latE7() / (double) Position.PER_DEGREE;
        double longitude = position.lonE7() / (double) Position.PER_DEGREE;
        return latitude > box.get(0) && longitude > box.get(1) && latitude < box.get(2) && longitude < box.get(3);
    }

    @Test
    void canyonsAreNamedInSixScriptsAndPeopleInSeven() {
        assertThat(CANYONS.stream().flatMap(record -> scripts(record.canyon().name())))
                .contains(
                        UnicodeScript.LATIN,
                        UnicodeScript.GREEK,
                        UnicodeScript.CYRILLIC,
                        UnicodeScript.HAN,
                        UnicodeScript.ARABIC,
                        UnicodeScript.DEVANAGARI);
        assertThat(inspections().flatMap(one -> scripts(one.by())))
                .contains(
                        UnicodeScript.LATIN,
                        UnicodeScript.GREEK,
                        UnicodeScript.CYRILLIC,
                        UnicodeScript.HAN,
                        UnicodeScript.HIRAGANA,
                        UnicodeScript.ARABIC,
                        UnicodeScript.GEORGIAN);
        assertThat(stations().flatMap(record -> scripts(record.station().name())))
                .contains(UnicodeScript.GREEK, UnicodeScript.CYRILLIC, UnicodeScript.HAN, UnicodeScript.ARABIC);
    }

    private static Stream<UnicodeScript> scripts(String name) {
        return name.codePoints().filter(Character::isLetter).mapToObj(UnicodeScript::of);
    }

    @Test
    void everyNameIsFoundByItselfAndByItsOtherName() {
        FindRecord find = new FindRecord(SESSION);

        for (String words : List.of("Αλμυροβρόχης", "salt rain", "ледокапнице", "霧縫", "وادي النعاس", "अनसुनी")) {
            assertThat(find.canyon(words).canyon().name()).as(words).isNotBlank();
        }
    }

    @Test
    void twoCanyonsShareANameAndNotARegion() {
        List<CanyonRow> twins = new ListCanyons(SESSION)
                .found(Finding.of("Torrente Sgocciolino"))
                .rows();

        assertThat(twins).hasSize(2);
        assertThat(twins.get(0).name()).isEqualTo(twins.get(1).name());
        assertThat(twins.get(0).whereabouts()).isNotEqualTo(twins.get(1).whereabouts());
        assertThatThrownBy(() -> new FindRecord(SESSION).canyon("Torrente Sgocciolino"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("fits several canyons")
                .hasMessageContaining(twins.get(0).uid().text())
                .hasMessageContaining(twins.get(1).uid().text())
                .hasMessageContaining("Alta Brumaia")
                .hasMessageContaining("Costa Velenta");
    }

    @Test
    void ofOneCanyonNextToNothingIsKnown() {
        assertThat(CANYONS.stream().filter(record -> record.stations().isEmpty()))
                .singleElement()
                .satisfies(record -> {
                    assertThat(record.line()).hasSize(1);
                    assertThat(record.line().get(0).obstacle().height()).isEmpty();
                    assertThat(record.line().get(0).obstacle().distance()).isEmpty();
                    assertThat(record.canyon().longestDrop()).isEmpty();
                    assertThat(record.canyon().position()).isEmpty();
                    assertThat(record.canyon().french()).isEmpty();
                    assertThat(record.canyon().american()).isEmpty();
                });
    }

    @Test
    void gradesAreInBothNotationsInEitherAndInNone() {
        assertThat(CANYONS.stream()
                        .map(record -> record.canyon().french().isPresent() + " "
                                + record.canyon().american().isPresent()))
                .contains("true true", "true false", "false true", "false false");
    }

    @Test
    void aBigDropHasStationsOnTheWay() {
        assertThat(places().filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                        .filter(place -> place.obstacle()
                                .height()
                                .filter(height -> height.metres() >= 60)
                                .isPresent()))
                .hasSize(2)
                .anyMatch(place -> place.stations().size() == 3);
    }

    @Test
    void oneBatchCanBeCalledBackInFourCanyons() {
        Map<String, Set<String>> canyons = new TreeMap<>();
        CANYONS.forEach(record -> record.stations()
                .forEach(station -> station.parts()
                        .forEach(part -> canyons.merge(
                                part.part().hardware().batch(),
                                Set.of(record.canyon().uid().text()),
                                (one, other) -> Stream.concat(one.stream(), other.stream())
                                        .collect(toSet())))));

        assertThat(canyons.get("FL-2207-B")).hasSize(4);
        assertThat(parts().filter(part -> part.part().hardware().batch().equals("FL-2207-B")))
                .hasSize(15)
                .allMatch(part -> part.part().kind() == PartKind.BOLT)
                .allMatch(part -> part.part().hardware().maker().equals("Ferrolind"));
        assertThat(canyons).as("marks that are easily taken for it").containsKeys("FL-2207-8", "FL-2207-C");
    }

    @Test
    void inspectionsRunOverEightYears() {
        assertThat(inspections().map(one -> one.on().year()).collect(toSet()))
                .contains(2019, 2020, 2021, 2022, 2023, 2024, 2025, 2026);
    }

    @Test
    void everyCanyonWithStationsWasSeenBySeveralPeople() {
        assertThat(CANYONS.stream().filter(record -> !record.stations().isEmpty()))
                .allSatisfy(record -> assertThat(record.stations().stream()
                                .flatMap(station -> station.parts().stream())
                                .flatMap(part -> part.inspections().stream())
                                .map(entry -> entry.content().by())
                                .distinct())
                        .hasSizeGreaterThanOrEqualTo(2));
    }

    @Test
    void someStationsWereNeverInspectedAndSomeAreInContradiction() {
        assertThat(stations().filter(SampleScopeTest::isUnseen)).hasSizeGreaterThanOrEqualTo(3);
        assertThat(CANYONS.stream()
                        .filter(record -> record.stations().stream().anyMatch(StationRecord::hasContradiction)))
                .hasSizeGreaterThanOrEqualTo(5);
    }

    private static boolean isUnseen(StationRecord record) {
        return record.parts().stream().allMatch(part -> part.inspections().isEmpty());
    }

    @Test
    void whatGroupsHadTroubleWithIsWrittenDown() {
        assertThat(notes().filter(note ->
                        note.content().prose().under(NoteText.TROUBLE).isPresent()))
                .hasSizeGreaterThanOrEqualTo(12);
    }

    @Test
    void webbingAgesFromWornOverDoubtfulToANewOne() {
        assertThat(parts().filter(part -> part.part().kind() == PartKind.CORD
                                || part.part().kind() == PartKind.WEBBING)
                        .filter(SampleScopeTest::wasWornBeforeItWasReplaced))
                .hasSizeGreaterThanOrEqualTo(8);
    }

    private static boolean wasWornBeforeItWasReplaced(PartRecord part) {
        List<Inspection> oldestFirst = oldestFirst(part);
        for (int i = 1; i < oldestFirst.size(); i++) {
            Inspection now = oldestFirst.get(i);
            if (now.work().contains(Work.REPLACED)
                    && now.found().filter(Condition.DOUBTFUL::equals).isPresent()
                    && oldestFirst.get(i - 1).afterwards().equals(now.found().map(found -> Condition.WORN))) {
                return true;
            }
        }
        return false;
    }

    /** A place in the records that was replaced keeps what was found on the piece before; it is then younger than that. */
    @Test
    void nothingWasInspectedBeforeItWasPlacedUnlessItWasReplaced() {
        assertThat(parts().filter(part -> part.part().placed().isPresent())
                        .filter(part -> part.inspections().stream()
                                .noneMatch(entry -> entry.content().work().contains(Work.REPLACED))))
                .hasSizeGreaterThan(60)
                .allSatisfy(part -> assertThat(oldestFirst(part).stream().map(Inspection::on))
                        .allMatch(on -> !on.latest()
                                .isBefore(part.part()
                                        .placed()
                                        .map(PartialDate::earliest)
                                        .orElseThrow())));
    }

    private static List<Inspection> oldestFirst(PartRecord part) {
        return part.inspections().stream()
                .map(Entry::content)
                .sorted((one, other) -> PartialDate.BY_LAST_DAY.compare(one.on(), other.on()))
                .toList();
    }

    @Test
    void labelsAreUniqueInAnAnchorSoThatOnePartCanBeNamed() {
        assertThat(stations().flatMap(station -> station.anchors().stream()))
                .allSatisfy(anchor -> assertThat(anchor.parts().stream()
                                .collect(groupingBy(part -> part.part().label(), mapping(PartRecord::part, toSet()))))
                        .hasSize(anchor.parts().size()));
    }
}
