package thalweg.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonText;
import thalweg.ledger.Uid;
import thalweg.logbook.InventoryFingerprint;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.testing.RandomThings;

class BodyRoundTripTest {

    private static final Uid SELF = Uid.minted(1, new UUID(1, 1));
    private static final Uid PARENT = Uid.minted(2, new UUID(2, 2));
    private static final InventoryFingerprint INVENTORY =
            new InventoryFingerprint(Map.of(SELF, "0123456789abcdef", PARENT, "ffffffffffffffff"));

    /** Writes and reads records of one kind as the ledger does, and holds the written keys against those asked for. */
    private static <T> void roundTrip(
            Fill fill,
            Function<RandomThings, T> maker,
            Function<T, Json.Fields> writer,
            BiFunction<Json.Fields, FieldReader, Optional<T>> reader,
            String... parentKey) {
        for (int seed = 0; seed < 400; seed++) {
            T written = maker.apply(new RandomRecords(seed, fill).things());
            String canonical = JsonText.canonical(writer.apply(written));
            Findings findings = new Findings();
            JsonDocument document = JsonDocument.read("body", canonical);
            FieldReader in = document.reader(findings);

            Optional<T> read = reader.apply((Json.Fields) document.root(), in);

            assertThat(findings.all()).isEmpty();
            assertThat(read).contains(written);
            assertThat(in.unasked()).isEqualTo(Set.of(parentKey));
            assertThat(JsonText.canonical(writer.apply(read.orElseThrow()))).isEqualTo(canonical);
        }
    }

    @ParameterizedTest
    @EnumSource
    void canyons(Fill fill) {
        roundTrip(fill, make -> make.canyon(SELF), CanyonBody::write, (body, in) -> CanyonBody.read(SELF, in));
    }

    @ParameterizedTest
    @EnumSource
    void obstacles(Fill fill) {
        roundTrip(
                fill,
                make -> make.obstacle(SELF, PARENT, "aV"),
                ObstacleBody::write,
                (body, in) -> ObstacleBody.read(SELF, PARENT, "", in),
                "canyon");
    }

    @ParameterizedTest
    @EnumSource
    void stations(Fill fill) {
        roundTrip(
                fill,
                make -> make.station(SELF, PARENT, "aV"),
                StationBody::write,
                (body, in) -> StationBody.read(SELF, PARENT, "", in),
                "obstacle");
    }

    @ParameterizedTest
    @EnumSource
    void anchors(Fill fill) {
        roundTrip(
                fill,
                make -> make.anchor(SELF, PARENT, "aV"),
                AnchorBody::write,
                (body, in) -> AnchorBody.read(SELF, PARENT, "", in),
                "station");
    }

    @ParameterizedTest
    @EnumSource
    void parts(Fill fill) {
        roundTrip(
                fill,
                make -> make.part(SELF, PARENT, "aV"),
                PartBody::write,
                (body, in) -> PartBody.read(SELF, PARENT, "", in),
                "anchor");
    }

    @ParameterizedTest
    @EnumSource
    void inspections(Fill fill) {
        roundTrip(
                fill,
                make -> make.inspection(PARENT),
                InspectionBody::write,
                (body, in) -> InspectionBody.read(PARENT, in));
    }

    @ParameterizedTest
    @EnumSource
    void riggingNotes(Fill fill) {
        roundTrip(fill, make -> make.note(PARENT), NoteBody::write, (body, in) -> NoteBody.read(PARENT, in));
    }

    @ParameterizedTest
    @EnumSource
    void rigAnalyses(Fill fill) {
        roundTrip(
                fill,
                make -> make.analysis(PARENT, INVENTORY),
                AnalysisBody::write,
                (body, in) -> AnalysisBody.read(PARENT, in));
    }

    @ParameterizedTest
    @EnumSource
    void rounds(Fill fill) {
        roundTrip(fill, make -> make.round(PARENT), RoundBody::write, (body, in) -> RoundBody.read(PARENT, in));
    }

    @ParameterizedTest
    @EnumSource
    void sheetsGiven(Fill fill) {
        roundTrip(
                fill,
                make -> make.sheetGiven(PARENT),
                SheetGivenBody::write,
                (body, in) -> SheetGivenBody.read(PARENT, in));
    }

    @ParameterizedTest
    @EnumSource
    void trips(Fill fill) {
        roundTrip(
                fill,
                make -> make.trip(SELF, PARENT),
                TripBody::write,
                (body, in) -> TripBody.read(SELF, PARENT, in),
                TripBody.PARENT);
    }

    @ParameterizedTest
    @EnumSource
    void privateNotes(Fill fill) {
        roundTrip(
                fill,
                make -> make.privateNote(SELF, PARENT),
                PrivateNoteBody::write,
                (body, in) -> PrivateNoteBody.read(SELF, PARENT, in),
                PrivateNoteBody.PARENT);
    }

    /** What nobody knows leaves no key behind that could look like a value. */
    @Test
    void theUnknownIsLeftOut() {
        RandomThings make = new RandomRecords(1, Fill.NOTHING).things();

        assertThat(CanyonBody.write(make.canyon(SELF)).values()).containsOnlyKeys("name");
        assertThat(ObstacleBody.write(make.obstacle(SELF, PARENT, "V")).values())
                .containsOnlyKeys("canyon", "order", "kind");
        assertThat(StationBody.write(make.station(SELF, PARENT, "V")).values())
                .containsOnlyKeys("obstacle", "order", "name");
        assertThat(AnchorBody.write(make.anchor(SELF, PARENT, "V")).values())
                .containsOnlyKeys("station", "order", "role");
        assertThat(PartBody.write(make.part(SELF, PARENT, "V")).values())
                .containsOnlyKeys("anchor", "order", "label", "kind");
        assertThat(InspectionBody.write(make.inspection(PARENT)).values()).containsOnlyKeys("on", "not_seen");
    }

    @Test
    void everyFieldIsKnownWhenEverythingIs() {
        RandomThings make = new RandomRecords(1, Fill.EVERYTHING).things();

        assertThat(CanyonBody.write(make.canyon(SELF)).values()).hasSize(21);
        assertThat(PartBody.write(make.part(SELF, PARENT, "V")).values()).hasSize(15);
        assertThat(InspectionBody.write(make.inspection(PARENT)).values())
                .containsOnlyKeys("on", "by", "found", "left", "water", "work", "note", "round", "photos");
        assertThat(TripBody.write(make.trip(SELF, PARENT)).values())
                .containsKeys("canyon", "state", "on", "name", "start_min", "back_min", "water", "note");
    }
}
