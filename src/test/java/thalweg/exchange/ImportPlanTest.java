package thalweg.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thalweg.body.CanyonBody;
import thalweg.body.FactBody;
import thalweg.exchange.ImportPlan.FieldChange;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.route.Canyon;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class ImportPlanTest {

    private static final String AT = "2026-11-26T10:00:00Z";

    private final MemoryKnown known = new MemoryKnown();
    private final CanyonRecord canyon = new RandomRecords(8, Fill.EVERYTHING).canyon();

    private ImportPlan plan(CanyonRecord... incoming) {
        return ImportPlan.of(Arrays.stream(incoming).map(Parcel::of).toList(), known, "Bo", AT);
    }

    private static CanyonRecord with(CanyonRecord record, Json.Fields body) {
        Canyon changed = CanyonBody.read(record.canyon().uid(), FieldReader.of(body, new Findings()))
                .orElseThrow();
        return new CanyonRecord(changed, record.line());
    }

    @Test
    void everythingInANewCanyonIsAddedParentsFirst() {
        ImportPlan plan = plan(canyon);

        Set<Uid> there = new HashSet<>();
        for (Revision revision : plan.revisions()) {
            for (String parent : List.of("canyon", "obstacle", "station", "anchor")) {
                revision.body()
                        .field(parent)
                        .ifPresent(uid -> assertThat(there)
                                .contains(Uid.parse(((Json.Text) uid).value()).orElseThrow()));
            }
            there.add(revision.thing());
            assertThat(revision.gen()).isEqualTo(1);
            assertThat(revision.author()).isEqualTo("Bo");
            assertThat(revision.at()).isEqualTo(AT);
        }
        assertThat(plan.added()).isEqualTo(plan.revisions().size()).isGreaterThan(5);
        assertThat(plan.facts()).isNotEmpty();
        for (Fact fact : plan.facts()) {
            assertThat(there).as("what %s is about comes before it", fact).contains(fact.about());
            there.add(fact.uid());
        }
        assertThat(plan.canyons()).isEqualTo(1);
        assertThat(plan.changes()).isEmpty();
        assertThat(plan.unchanged()).isZero();
    }

    @Test
    void factsKeepTheAuthorsAndTimesOfTheFile() {
        List<Fact> expected = new ArrayList<>();
        for (StationRecord station : canyon.stations()) {
            for (PartRecord part : station.parts()) {
                part.inspections()
                        .forEach(e -> expected.addAll(FactBody.of(e.content()).facts(e)));
            }
            station.notes()
                    .forEach(e -> expected.addAll(FactBody.of(e.content()).facts(e)));
            station.analyses()
                    .forEach(e -> expected.addAll(FactBody.of(e.content()).facts(e)));
        }
        canyon.rounds().forEach(e -> expected.addAll(FactBody.of(e.content()).facts(e)));

        assertThat(plan(canyon).facts()).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void changedFieldsAreListedWithWhatTheyWereAndBecome() {
        known.accept(plan(canyon));
        Json.Fields body = CanyonBody.write(canyon.canyon());
        Json.Fields changed = body.with("name", Json.of("Renamed"))
                .with("longest_drop_cm", Json.of(1234))
                .with("other_names", Json.texts(List.of("One", "Two")))
                .with("region", Json.NOTHING);
        Revision head = known.head(canyon.canyon().uid()).orElseThrow();

        ImportPlan plan = plan(with(canyon, changed));

        assertThat(plan.changes())
                .containsExactlyInAnyOrder(
                        new FieldChange(
                                "canyon Renamed", "name", canyon.canyon().name(), "Renamed"),
                        new FieldChange(
                                "canyon Renamed",
                                "longest_drop_cm",
                                "" + canyon.canyon().longestDrop().orElseThrow().inCentimetres(),
                                "1234"),
                        new FieldChange(
                                "canyon Renamed",
                                "other_names",
                                JsonText.canonical(body.field("other_names").orElseThrow()),
                                "[\"One\",\"Two\"]"),
                        new FieldChange(
                                "canyon Renamed", "region", canyon.canyon().region(), ""));
        assertThat(plan.revisions()).singleElement().satisfies(revision -> {
            assertThat(revision.parents()).containsExactly(head.hash());
            assertThat(revision.gen()).isEqualTo(2);
        });
        assertThat(plan.added()).isZero();
        assertThat(plan.facts()).isEmpty();
    }

    @Test
    void aFieldThatIsNewIsAChangeFromNothing() {
        CanyonRecord bare = new RandomRecords(8, Fill.NOTHING).canyon();
        known.accept(plan(bare));

        ImportPlan plan = plan(with(bare, CanyonBody.write(bare.canyon()).with("country", Json.of("Utopia"))));

        assertThat(plan.changes())
                .containsExactly(new FieldChange("canyon " + bare.canyon().name(), "country", "", "Utopia"));
    }

    @Test
    void oneNewInspectionIsOneFact() {
        known.accept(plan(canyon));
        LineRecord place = canyon.line().stream()
                .filter(line -> !line.stations().isEmpty())
                .findFirst()
                .orElseThrow();
        StationRecord station = place.stations().get(0);
        var note = new RandomRecords(99, Fill.SOMETHING)
                .things()
                .note(station.station().uid());
        Fact fact = FactBody.of(note).fact("Cy", AT);
        List<Entry<RiggingNote>> notes = new ArrayList<>(station.notes());
        notes.add(new Entry<>(fact.uid(), note, fact.author(), fact.at()));
        StationRecord more = new StationRecord(station.station(), station.anchors(), notes, station.analyses());
        CanyonRecord changed =
                new CanyonRecord(canyon.canyon(), List.of(new LineRecord(1, place.obstacle(), List.of(more))));

        ImportPlan plan = plan(changed);

        assertThat(plan.facts()).containsExactly(fact);
        assertThat(plan.revisions()).isEmpty();
        assertThat(plan.isEmpty()).isFalse();
    }

    @Test
    void theSameFactTwiceInOneFileIsOneFact() {
        ImportPlan once = plan(canyon);
        CanyonRecord doubled = new CanyonRecord(
                canyon.canyon(),
                canyon.line().stream()
                        .map(place -> new LineRecord(
                                place.number(),
                                place.obstacle(),
                                place.stations().stream()
                                        .map(station -> new StationRecord(
                                                station.station(),
                                                station.anchors(),
                                                twice(station.notes()),
                                                twice(station.analyses())))
                                        .toList()))
                        .toList());

        assertThat(plan(doubled).facts()).isEqualTo(once.facts());
        assertThat(plan(doubled).unchanged()).isPositive();
    }

    private static <T> List<T> twice(List<T> list) {
        List<T> doubled = new ArrayList<>(list);
        doubled.addAll(list);
        return doubled;
    }

    @Test
    void anotherCanyonOfTheSameNameIsRemarked() {
        known.accept(plan(canyon));
        Canyon twin = CanyonBody.read(
                        new RandomRecords(77, Fill.NOTHING).uid(),
                        FieldReader.of(CanyonBody.write(canyon.canyon()), new Findings()))
                .orElseThrow();

        ImportPlan plan = plan(new CanyonRecord(twin, List.of()));

        assertThat(plan.remarks())
                .extracting(Sentence::toString)
                .containsExactly("There is another canyon named \"" + twin.name()
                        + "\" here already; both would stand side by side.");
        assertThat(plan(canyon).remarks()).isEmpty();
    }

    @Test
    void anIdThatStandsForAnotherTypeHereIsRefused() {
        known.accept(plan(canyon));
        Uid obstacle = canyon.line().get(0).obstacle().uid();
        CanyonRecord mixed =
                new CanyonRecord(new RandomRecords(3, Fill.NOTHING).things().canyon(obstacle), List.of());

        assertThatThrownBy(() -> plan(mixed))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("The id " + obstacle.text()
                        + " names an existing obstacle here, but in the file the" + " canyon \"");
    }

    @Test
    void aThingThatWasTakenOutOfUseComesBack() {
        known.accept(plan(canyon));
        Revision head = known.head(canyon.canyon().uid()).orElseThrow();
        Revision deleted = head.next(head.body(), true, "Bo", AT);
        Known without = new Known() {
            @Override
            public Optional<Revision> head(Uid thing) {
                return thing.equals(head.thing()) ? Optional.of(deleted) : known.head(thing);
            }

            @Override
            public boolean says(Fact fact) {
                return known.says(fact);
            }

            @Override
            public boolean isAmended(Fact fact) {
                return false;
            }

            @Override
            public boolean hasOtherCanyonNamed(String name, Uid uid) {
                return false;
            }
        };

        ImportPlan plan = ImportPlan.of(List.of(Parcel.of(canyon)), without, "Cy", AT);

        assertThat(plan.revisions()).singleElement().satisfies(revision -> {
            assertThat(revision.deleted()).isFalse();
            assertThat(revision.parents()).containsExactly(deleted.hash());
        });
    }
}
