package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Station;
import thalweg.route.Times;
import thalweg.service.LoadPhrases;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.units.Length;

class CanyonRecordTest {

    private static int counter;

    private static Uid uid() {
        counter++;
        return Uid.minted(counter, new UUID(0, counter));
    }

    private static Inspection inspection(Uid part, String date, Optional<Condition> found, Work... work) {
        return new Inspection(
                part, PartialDate.parse(date), "", found, Optional.empty(), Optional.empty(), List.of(work), "");
    }

    /** A part with inspections such as "2020-05 WORN", or "2020-05 -" where it was not seen. */
    private static PartRecord part(String... inspections) {
        Uid uid = uid();
        Part part = new Part(
                uid,
                uid,
                "V",
                "p",
                PartKind.BOLT,
                Part.Hardware.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        List<Entry<Inspection>> entries = new ArrayList<>();
        for (String text : inspections) {
            String[] words = text.split(" ", -1);
            Optional<Condition> found =
                    words[1].equals("-") ? Optional.empty() : Optional.of(Condition.valueOf(words[1]));
            entries.add(new Entry<>(uid(), inspection(uid, words[0], found), "Ana", "now"));
        }
        return PartRecord.of(part, entries);
    }

    private static StationRecord station(PartRecord... parts) {
        Uid uid = uid();
        Anchor anchor = new Anchor(uid(), uid, "V", AnchorRole.MAIN, "", "");
        return new StationRecord(
                new Station(
                        uid,
                        uid,
                        "V",
                        "S",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Prose.none()),
                List.of(new AnchorRecord(anchor, List.of(parts))),
                List.of(),
                List.of());
    }

    private static LineRecord place(int number, ObstacleKind kind, double height, StationRecord... stations) {
        Uid uid = uid();
        Obstacle obstacle = new Obstacle(
                uid,
                uid,
                "V",
                kind,
                "",
                Optional.empty(),
                height > 0 ? Optional.of(new Length(height)) : Optional.empty(),
                Optional.empty(),
                "");
        return new LineRecord(number, obstacle, List.of(stations));
    }

    private static CanyonRecord canyon(Optional<Length> statedDrop, LineRecord... line) {
        Canyon canyon = new Canyon(
                uid(),
                "Invented",
                List.of(),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                statedDrop,
                Prose.none(),
                true);
        return new CanyonRecord(canyon, List.of(line));
    }

    @Test
    void newestAndOldestNewsCountOnlyWhatWasSeen() {
        CanyonRecord canyon = canyon(
                Optional.empty(),
                place(1, ObstacleKind.DROP, 10, station(part("2019-05 WORN", "2024-07-01 -"), part("2022 SOUND"))),
                place(2, ObstacleKind.DROP, 20, station(part(), part("2023-01-01 SOUND", "2015-01-01 GONE"))));

        assertThat(canyon.newestInspection()).contains(PartialDate.parse("2023-01-01"));
        assertThat(canyon.oldestLastSeen()).contains(PartialDate.parse("2019-05"));
        assertThat(canyon.standing().neverSeen()).isEqualTo(1);
        assertThat(canyon.line().get(0).standing().worst()).contains(Condition.WORN);
        assertThat(canyon.line().get(1).standing().worst()).contains(Condition.SOUND);
        assertThat(canyon.stations()).hasSize(2);
    }

    @Test
    void amongDatesWithOneLastDayTheExactOneIsNewestInEveryOrder() {
        StationRecord one = station(part("2019-12-31 WORN"), part("2019 SOUND"));
        StationRecord other = station(part("2019 SOUND"), part("2019-12-31 WORN"));

        for (StationRecord station : List.of(one, other)) {
            CanyonRecord canyon = canyon(Optional.empty(), place(1, ObstacleKind.DROP, 1, station));
            assertThat(canyon.newestInspection()).contains(PartialDate.parse("2019-12-31"));
            assertThat(canyon.oldestLastSeen()).contains(PartialDate.parse("2019"));
        }
    }

    @Test
    void whereNothingIsKnownNothingIsSaid() {
        CanyonRecord canyon = canyon(Optional.empty(), place(1, ObstacleKind.DROP, 0, station(part("2020 -"))));

        assertThat(canyon.newestInspection()).isEmpty();
        assertThat(canyon.oldestLastSeen()).isEmpty();
        assertThat(canyon.longestDrop()).isEmpty();
        assertThat(canyon.line().get(0).standing().worst()).isEmpty();
        assertThat(canyon.standing().neverSeen()).isEqualTo(1);
        assertThat(canyon(Optional.empty()).newestInspection()).isEmpty();
    }

    @Test
    void theLongestDropIsAsStatedOrElseTheHighestDropOnTheLine() {
        LineRecord[] line = {
            place(1, ObstacleKind.DROP, 12), place(2, ObstacleKind.SLIDE, 30), place(3, ObstacleKind.DROP, 18)
        };

        assertThat(canyon(Optional.empty(), line).longestDrop()).contains(new Length(18));
        assertThat(canyon(Optional.of(new Length(25)), line).longestDrop()).contains(new Length(25));
    }

    @Test
    void whatIsGoneDoesNotHideTheConditionOfWhatIsThere() {
        LineRecord first = place(1, ObstacleKind.DROP, 5, station(part("2020 DOUBTFUL"), part("2021 GONE"), part()));
        LineRecord second = place(2, ObstacleKind.DROP, 5, station(part("2020 GONE")), station(part("2020 SOUND")));

        assertThat(first.standing()).isEqualTo(new Standing(Optional.of(Condition.DOUBTFUL), 1, 1));
        assertThat(second.standing()).isEqualTo(new Standing(Optional.of(Condition.SOUND), 1, 0));
        assertThat(canyon(Optional.empty(), first, second).standing())
                .isEqualTo(new Standing(Optional.of(Condition.DOUBTFUL), 2, 1));
        assertThat(second.stations().get(0).standing().condition()).contains(Condition.GONE);
        assertThat(second.stations().get(0).standing().worst()).isEmpty();
    }

    @Test
    void aStandingIsInWordsWithTheMostUrgentFirst() {
        Standing mixed = new Standing(Optional.of(Condition.DOUBTFUL), 1, 2);

        assertThat(ConditionWords.told(mixed, LoadPhrases.english())).isEqualTo("x 1 gone, ? doubtful +2 unseen");
        assertThat(ConditionWords.told(new Standing(Optional.empty(), 2, 1), LoadPhrases.english()))
                .isEqualTo("x gone +1 unseen");
        assertThat(ConditionWords.told(new Standing(Optional.empty(), 0, 3), LoadPhrases.english()))
                .isEqualTo(". never inspected");
    }

    @Test
    void aStationKnowsItsPartsAndWhetherEntriesDisagree() {
        PartRecord bolt = part("2020-05-01 SOUND", "2020-05-01 UNSAFE");
        StationRecord station = station(part(), bolt);
        CanyonRecord canyon = canyon(Optional.empty(), place(1, ObstacleKind.DROP, 5, station));

        assertThat(station.part(bolt.part().uid())).contains(bolt);
        assertThat(station.part(uid())).isEmpty();
        assertThat(station.hasContradiction()).isTrue();
        assertThat(station(part("2020 SOUND")).hasContradiction()).isFalse();
        assertThat(station.standing().worst()).contains(Condition.UNSAFE);
        assertThat(canyon.station(station.station().uid())).contains(station);
        assertThat(canyon.station(uid())).isEmpty();
        assertThat(canyon.place(canyon.line().get(0).obstacle().uid()))
                .contains(canyon.line().get(0));
        assertThat(canyon.placeOf(uid())).isEmpty();
    }

    @Test
    void inspectionsStandNewestFirstWhateverTheOrderGiven() {
        List<Entry<Inspection>> entries = new ArrayList<>();
        Part part = part().part();
        for (String date : List.of("2019", "2020-01", "2020-01-31", "2021-06-01", "2018-01-01", "2021-06-01")) {
            entries.add(new Entry<>(
                    uid(), inspection(part.uid(), date, Optional.of(Condition.SOUND), Work.REPLACED), "Ana", "now"));
        }
        List<Entry<Inspection>> expected = PartRecord.of(part, entries).inspections();

        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(entries, new Random(seed));
            assertThat(PartRecord.of(part, entries).inspections()).isEqualTo(expected);
        }
        assertThat(expected.stream().map(entry -> entry.content().on().latest().getYear()))
                .containsExactly(2021, 2021, 2020, 2020, 2019, 2018);
        assertThat(PartRecord.of(part, entries).lastReplaced()).contains(PartialDate.parse("2021-06-01"));
        assertThat(part("2020 SOUND").lastReplaced()).isEmpty();
    }

    @Test
    void everyStationLeadsToItsPlaceOnTheLine() {
        CanyonRecord canyon = new RandomRecords(8, Fill.SOMETHING).canyon();

        assertThat(canyon.stations()).isNotEmpty();
        for (LineRecord place : canyon.line()) {
            for (StationRecord station : place.stations()) {
                assertThat(canyon.placeOf(station.station().uid())).contains(place);
            }
        }
    }

    @Test
    void aRiggingNoteSaysSomething() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RiggingNote(uid(), PartialDate.parse("2020"), "Ana", Prose.none()));
        assertThat(new RiggingNote(uid(), PartialDate.parse("2020"), "", new Prose<>(Map.of(NoteText.TROUBLE, "stuck")))
                        .prose()
                        .under(NoteText.TROUBLE))
                .contains("stuck");
    }
}
