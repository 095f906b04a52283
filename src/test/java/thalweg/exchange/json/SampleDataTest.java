package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static thalweg.testing.SampleRecords.CANYONS;
import static thalweg.testing.SampleRecords.FULLY_KNOWN;
import static thalweg.testing.SampleRecords.PARCELS;
import static thalweg.testing.SampleRecords.TODAY;
import static thalweg.testing.SampleRecords.analyses;
import static thalweg.testing.SampleRecords.anchors;
import static thalweg.testing.SampleRecords.bytes;
import static thalweg.testing.SampleRecords.inspections;
import static thalweg.testing.SampleRecords.notes;
import static thalweg.testing.SampleRecords.parts;
import static thalweg.testing.SampleRecords.places;
import static thalweg.testing.SampleRecords.read;
import static thalweg.testing.SampleRecords.stations;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thalweg.exchange.Parcel;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionRules;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.NoteText;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PartState;
import thalweg.logbook.StationRecord;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.AnchorRole;
import thalweg.route.CanyonText;
import thalweg.route.HoldsAlone;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.route.Side;
import thalweg.route.StationText;
import thalweg.units.Force;
import thalweg.units.Length;

class SampleDataTest {

    /**
     * What a standard asks of a new part, across and along its axis [N]; cord with its size. Sources: EN 959:2018 (25
     * and 15 kN), EN 362:2004 class Q (25 kN), EN 12275:2013 types B and H (20 kN), EN 564 (0.2 d^2 kN for d mm), EN 566
     * (22 kN), EN 1891 type A (22 kN), MIL-W-5625 (1 in webbing: 4,000 lbf).
     */
    private static final Map<String, String> STANDARDS = Map.ofEntries(
            entry("EN 959:2018", "25000 15000"),
            entry("EN 362, class Q", "25000 -"),
            entry("EN 12275, type B", "20000 -"),
            entry("EN 12275, type H", "20000 -"),
            entry("EN 564, 6 mm", "7200 -"),
            entry("EN 564, 7 mm", "9800 -"),
            entry("EN 564, 8 mm", "12800 -"),
            entry("EN 566", "22000 -"),
            entry("EN 1891, type A", "22000 -"),
            entry("MIL-W-5625", "17793 -"));

    @Test
    void everyCanyonSaysThatItIsInvented() {
        assertThat(CANYONS)
                .hasSizeGreaterThanOrEqualTo(2)
                .allMatch(record -> record.canyon().invented());
        assertThat(CANYONS)
                .extracting(record ->
                        record.canyon().prose().under(CanyonText.NOTES).orElseThrow())
                .allMatch(notes -> notes.startsWith("Invented for practice") && notes.contains("open ocean"));
    }

    @Test
    void thereIsEnoughToPractiseOn() {
        assertThat(FULLY_KNOWN).allMatch(record -> record.line().size() >= 8);
        assertThat(stations()).hasSizeGreaterThanOrEqualTo(12);
        assertThat(parts()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(inspections()).hasSizeGreaterThanOrEqualTo(90);
        assertThat(inspections().map(Inspection::by).distinct())
                .hasSizeGreaterThanOrEqualTo(7)
                .contains("");
    }

    @Test
    void everyThingHasAnIdOfVersionSeven() {
        assertThat(uids())
                .allMatch(uid -> uid.value().version() == 7 && uid.value().variant() == 2);
    }

    @Test
    void everyFactSaysWhoWroteItDownAndWhenAndLeavesItsIdToItsHash() {
        List<Json.Fields> facts = new ArrayList<>();
        collectFacts(JsonDocument.read("sample data", bytes()).root(), facts);

        assertThat(facts).hasSize((int)
                (inspections().count() + notes().count() + analyses().count() + rounds() + sheetsGiven()));
        assertThat(facts)
                .allMatch(fact ->
                        fact.field("author").isPresent() && fact.field("at").isPresent());
        assertThat(facts).noneMatch(fact -> fact.field("uid").isPresent());
    }

    private static long rounds() {
        return CANYONS.stream().mapToLong(canyon -> canyon.rounds().size()).sum();
    }

    private static long sheetsGiven() {
        return PARCELS.stream()
                .mapToLong(parcel -> parcel.local().sheets().size())
                .sum();
    }

    private static void collectFacts(Json value, List<Json.Fields> facts) {
        if (value instanceof Json.Items items) {
            items.values().forEach(item -> collectFacts(item, facts));
        } else if (value instanceof Json.Fields fields) {
            boolean trip = fields.field("state").isPresent();
            if (fields.field("on").isPresent() && !trip) {
                facts.add(fields);
            }
            fields.values().values().forEach(inner -> collectFacts(inner, facts));
        }
    }

    @Test
    void nothingWasWrittenDownBeforeItWasSeenOrAfterTheStoryEnds() {
        Stream<Entry<Inspection>> entries = parts().flatMap(part -> part.inspections().stream());

        assertThat(entries)
                .allSatisfy(found -> writtenAfter(found.at(), found.content().on()));
        assertThat(notes())
                .allSatisfy(note -> writtenAfter(note.at(), note.content().on()));
        assertThat(analyses())
                .allSatisfy(kept -> writtenAfter(kept.at(), kept.content().on()));
    }

    private static void writtenAfter(String at, PartialDate on) {
        LocalDate written = LocalDate.ofInstant(Instant.parse(at), ZoneOffset.UTC);
        assertThat(written).isAfterOrEqualTo(on.latest()).isBeforeOrEqualTo(TODAY);
    }

    @Test
    void everyWordOfEveryListOccurs() {
        assertThat(places().map(place -> place.obstacle().kind())).contains(ObstacleKind.values());
        assertThat(stations().flatMap(record -> record.station().side().stream()))
                .contains(Side.values());
        assertThat(anchors().map(record -> record.anchor().role())).contains(AnchorRole.values());
        assertThat(parts().map(record -> record.part().kind())).contains(PartKind.values());
        assertThat(parts().flatMap(record -> record.part().holdsAlone().stream()))
                .contains(HoldsAlone.values());
        assertThat(parts().map(PartRecord::part))
                .anyMatch(part -> part.kind().isPoint() && part.holdsAlone().isEmpty());
        assertThat(inspections().flatMap(one -> one.found().stream())).contains(Condition.values());
        assertThat(inspections().flatMap(one -> one.water().stream())).contains(WaterLevel.values());
        assertThat(inspections().flatMap(one -> one.work().stream())).contains(Work.values());
    }

    @Test
    void everyHeadingIsWrittenUnder() {
        assertThat(FULLY_KNOWN)
                .allSatisfy(
                        record -> assertThat(record.canyon().prose().texts()).containsOnlyKeys(CanyonText.values()));
        assertThat(stations().flatMap(record -> record.station().prose().texts().keySet().stream()))
                .contains(StationText.values());
        assertThat(notes().flatMap(note -> note.content().prose().texts().keySet().stream()))
                .contains(NoteText.values());
    }

    @Test
    void bothGradingsOccurAndOneLevelThatNobodyStated() {
        assertThat(FULLY_KNOWN).allMatch(record -> record.canyon().french().isPresent());
        assertThat(FULLY_KNOWN).allMatch(record -> record.canyon().american().isPresent());
        assertThat(FULLY_KNOWN.stream()
                        .map(record -> record.canyon().french().orElseThrow().print()))
                .containsExactly("v3 a1", "v5 a4 IV");
    }

    @Test
    void namesCarryLettersFromManyLanguages() {
        String names = String.join(
                " ",
                Stream.concat(
                                CANYONS.stream().flatMap(record -> record.canyon().otherNames().stream()),
                                inspections().map(Inspection::by))
                        .toList());

        assertThat(names).contains("\u00df", "\u0141", "\u0142", "\u00f8", "\u0159", "\u00fa", "\u00f1");
    }

    @Test
    void datesAreDaysMonthsAndYears() {
        List<Integer> lengths = List.of(4, 7, 10);

        assertThat(inspections().map(one -> one.on().print().length())).containsAll(lengths);
        assertThat(parts().flatMap(record -> record.part().placed().stream())
                        .map(date -> date.print().length()))
                .containsAll(lengths);
    }

    @Test
    void partsAreInEveryStateThatARecordCanHave() {
        List<PartState> states = parts().map(SampleDataTest::derived).toList();

        assertThat(states.stream().flatMap(state -> state.condition().stream())).contains(Condition.values());
        assertThat(states).contains(PartState.NEVER_INSPECTED);
        assertThat(FULLY_KNOWN)
                .allMatch(record -> record.stations().stream().anyMatch(StationRecord::hasContradiction));
        assertThat(states)
                .anyMatch(state ->
                        state.seenOn().isPresent() && state.notSeenSince().isPresent());
        assertThat(states)
                .anyMatch(state ->
                        state.seenOn().isEmpty() && state.notSeenSince().isPresent());
    }

    private static PartState derived(PartRecord record) {
        return ConditionRules.stateOf(
                record.inspections().stream().map(Entry::content).toList());
    }

    @Test
    void anEarlierQuarrelOfTwoPeopleIsSettledByALaterVisit() {
        assertThat(parts().filter(record -> !record.state().contradictory()))
                .anyMatch(record -> record.inspections().stream()
                                .map(found -> found.content().on() + " "
                                        + found.content().afterwards())
                                .distinct()
                                .count()
                        > record.inspections().stream()
                                .map(found -> found.content().on())
                                .distinct()
                                .count());
    }

    @Test
    void unsafeWebbingWasReplacedAndLeftSound() {
        assertThat(parts().filter(record -> record.part().kind() == PartKind.WEBBING)
                        .flatMap(record -> record.inspections().stream())
                        .map(Entry::content))
                .anyMatch(one -> one.work().contains(Work.REPLACED)
                        && one.found().equals(Optional.of(Condition.UNSAFE))
                        && one.left().equals(Optional.of(Condition.SOUND)));
    }

    @Test
    void aPartIsAsOldAsItsLastReplacement() {
        assertThat(parts())
                .allSatisfy(record -> record.inspections().stream()
                        .map(Entry::content)
                        .filter(one ->
                                one.work().contains(Work.ADDED) || one.work().contains(Work.REPLACED))
                        .findFirst()
                        .ifPresent(one -> assertThat(record.part().placed()).contains(one.on())));
    }

    @Test
    void aStrengthIsOnlyWhatAStandardAsksOfANewPart() {
        assertThat(parts().map(PartRecord::part)).allSatisfy(part -> {
            if (part.strength().isPresent() || part.axialStrength().isPresent()) {
                assertThat(newtons(part.strength()) + " " + newtons(part.axialStrength()))
                        .isEqualTo(STANDARDS.get(standard(part)));
            }
        });
    }

    private static String standard(Part part) {
        String standard = part.hardware().standard();
        return standard.equals("EN 564") ? standard + ", " + part.hardware().size() : standard;
    }

    private static String newtons(Optional<Force> force) {
        return force.map(known -> Long.toString(Math.round(known.newtons()))).orElse("-");
    }

    @Test
    void noStandardOnTheListIsSpareAndManyStrengthsAreUnknown() {
        List<Part> all = parts().map(PartRecord::part).toList();

        assertThat(all.stream().map(SampleDataTest::standard)).containsAll(STANDARDS.keySet());
        assertThat(all.stream().filter(part -> part.strength().isEmpty())).hasSizeGreaterThan(all.size() / 3);
        assertThat(all.stream().filter(part -> part.kind() == PartKind.BOLT))
                .anyMatch(part -> part.strength().isEmpty());
    }

    @Test
    void someAnchorsAreMeasuredFromTheirFirstPointAndSomeAreNot() {
        List<List<Optional<PartPlace>>> points = anchors()
                .map(record -> record.parts().stream()
                        .map(PartRecord::part)
                        .filter(part -> part.kind().isPoint())
                        .map(Part::place)
                        .toList())
                .filter(places -> places.size() > 1)
                .toList();
        List<List<Optional<PartPlace>>> measured = points.stream()
                .filter(places -> places.stream().allMatch(Optional::isPresent))
                .toList();
        Length none = Length.centimetres(0);

        assertThat(measured).hasSizeGreaterThanOrEqualTo(3).hasSizeLessThan(points.size());
        assertThat(measured).allMatch(places -> places.get(0).equals(Optional.of(new PartPlace(none, none, none))));
        assertThat(measured)
                .anyMatch(places ->
                        places.size() == 3 && places.get(1).orElseThrow().out().metres() < -0.5);
        assertThat(points.stream().filter(places -> !measured.contains(places)))
                .allMatch(places -> places.stream().allMatch(Optional::isEmpty));
    }

    @Test
    void distancesGrowAndHeightsAddUp() {
        assertThat(FULLY_KNOWN.stream().flatMap(record -> record.line().stream()))
                .allMatch(place -> place.obstacle().distance().isPresent());
        assertThat(CANYONS).allSatisfy(record -> {
            assertThat(record.line().stream().flatMap(place -> place.obstacle().distance().stream()))
                    .isSorted()
                    .doesNotHaveDuplicates();
            assertThat(record.line().stream()
                            .filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                            .flatMap(place -> place.obstacle().height().stream())
                            .max(Length::compareTo))
                    .isEqualTo(record.canyon().longestDrop());
        });
    }

    @Test
    void ropesReachTheGround() {
        assertThat(places().filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                        .filter(place -> place.obstacle().height().isPresent()
                                && !place.stations().isEmpty()))
                .hasSizeGreaterThanOrEqualTo(9)
                .allSatisfy(place -> assertThat(place.stations().stream()
                                .flatMap(record -> record.station().ropeNeeded().stream())
                                .mapToDouble(Length::metres)
                                .sum())
                        .isGreaterThan(place.obstacle().height().orElseThrow().metres()));
    }

    @Test
    void nothingIsLostBetweenWritingAndReading() {
        String written = RecordsWriter.write(PARCELS);

        List<Parcel> again = read(written.getBytes(StandardCharsets.UTF_8));

        assertThat(again).isEqualTo(PARCELS);
        assertThat(RecordsWriter.write(again)).isEqualTo(written);
    }

    private static Stream<Uid> uids() {
        return Stream.of(
                        CANYONS.stream().map(record -> record.canyon().uid()),
                        places().map(record -> record.obstacle().uid()),
                        stations().map(record -> record.station().uid()),
                        anchors().map(record -> record.anchor().uid()),
                        parts().map(record -> record.part().uid()))
                .flatMap(uids -> uids);
    }
}
