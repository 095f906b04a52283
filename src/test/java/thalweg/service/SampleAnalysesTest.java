package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thalweg.testing.SampleRecords.FILE;
import static thalweg.testing.SampleRecords.analyses;
import static thalweg.testing.SampleRecords.stations;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thalweg.exchange.json.RigAnswerText;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;
import thalweg.rig.Analyze;
import thalweg.rig.RigInput;
import thalweg.rig.RigKind;
import thalweg.rig.RigPoint;
import thalweg.rig.Vector3;
import thalweg.route.HoldsAlone;
import thalweg.route.Part;
import thalweg.units.Force;

/**
 * The rig analyses of the sample data against the calculator and against the stations with which they are kept.
 *
 * <p>When the calculator says more or something else than before, {@code -Dgolden.update=true} puts today's answers into
 * the file, and the difference is what is reviewed.
 */
final class SampleAnalysesTest {

    private record Kept(StationRecord station, RigAnalysis analysis) {

        RigInput input() {
            return AnalyzeRig.kept(analysis).orElseThrow(() -> new AssertionError("no rig: " + name()));
        }

        String name() {
            return station.station().name() + " " + analysis.on().print();
        }

        List<InventoryFingerprint.Change> changes() {
            return analysis.inventory().changesTo(station.inventory());
        }

        /** The first anchor that has a part of that label for each point. */
        AnchorRecord anchor() {
            return station.anchors().stream()
                    .filter(anchor -> input().points().stream()
                            .allMatch(point -> part(anchor, point.name()).isPresent()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("points of no anchor: " + name()));
        }
    }

    private static Optional<Part> part(AnchorRecord anchor, String label) {
        return anchor.parts().stream()
                .map(record -> record.part())
                .filter(part -> part.label().equals(label))
                .findFirst();
    }

    private static Stream<Kept> kept() {
        return stations()
                .flatMap(station ->
                        station.analyses().stream().map(Entry::content).map(content -> new Kept(station, content)));
    }

    @Test
    void everyRigStillComputesToWhatIsStored() throws IOException {
        String file = Files.readString(FILE);
        String renewed = file;
        for (Kept one : kept().toList()) {
            String today = RigAnswerText.line(Analyze.of(one.input()));
            if (Boolean.getBoolean("golden.update")) {
                renewed = renewed.replace(quoted(one.analysis().result()), quoted(today));
            } else {
                assertThat(one.analysis().result()).as(one.name()).isEqualTo(today);
            }
            assertThat(file).as(one.name()).contains(quoted(one.analysis().result()));
        }
        if (!renewed.equals(file)) {
            Files.writeString(FILE, renewed);
        }
    }

    private static String quoted(String text) {
        return JsonText.line(Json.of(text));
    }

    @Test
    void thoseWhoseStationsHaveChangedAreStaleAndNoOthers() {
        assertThat(kept().filter(one -> !one.changes().isEmpty()).map(Kept::name))
                .containsExactlyInAnyOrder(
                        "Orgue, top 2025-09-06",
                        "Salida 2024-05-12",
                        "Πρώτο Σκαλί 2023-06-17",
                        "Левак 2025-08-03",
                        "大緞帳 二 2022-08-06",
                        "الحلقة 2024-02-10",
                        "Bocca 2025-06-28");
        assertThat(kept().filter(one -> one.changes().isEmpty())).hasSize(15);
    }

    @Test
    void staleOnesAreSoBecausePartsWereAddedLostOrFoundWorse() {
        assertThat(kept().flatMap(one -> one.changes().stream().map(InventoryFingerprint.Change::kind)))
                .contains(InventoryFingerprint.Kind.ADDED, InventoryFingerprint.Kind.CHANGED);
        assertThat(kept().filter(one -> one.changes().size() > 3)).isNotEmpty();
    }

    @Test
    void pointsAndSpacingAreThoseOfTheStation() {
        assertThat(kept()).isNotEmpty().allSatisfy(one -> {
            AnchorRecord anchor = one.anchor();
            for (RigPoint point : one.input().points()) {
                Part part = part(anchor, point.name()).orElseThrow();
                assertThat(point.at().distance(place(part))).as(point.name()).isCloseTo(0, within(1e-9));
                assertThat(point.strength().map(Force::newtons))
                        .as(point.name())
                        .isEqualTo(part.strength().map(Force::newtons));
                assertThat(point.holdsAlone())
                        .as(point.name())
                        .isEqualTo(part.holdsAlone().map(HoldsAlone.YES::equals));
            }
        });
    }

    /** Where nobody measured, there is one point, and it is where the axes meet. */
    private static Vector3 place(Part part) {
        return part.place()
                .map(place -> new Vector3(
                        place.right().metres(), place.up().metres(), place.out().metres()))
                .orElse(Vector3.ZERO);
    }

    @Test
    void aRigOfSeveralPointsHasThemMeasured() {
        assertThat(kept().filter(one -> one.input().points().size() > 1))
                .hasSizeGreaterThanOrEqualTo(15)
                .allSatisfy(one -> assertThat(one.input().points())
                        .allMatch(point -> part(one.anchor(), point.name())
                                .orElseThrow()
                                .place()
                                .isPresent()));
    }

    @Test
    void theyAreOfManyShapes() {
        assertThat(analyses()).hasSizeGreaterThanOrEqualTo(15);
        assertThat(kept().map(one -> one.input().rig().kind())).contains(RigKind.SINGLE, RigKind.FOCUSED);
        assertThat(kept().map(one -> one.input().points().size())).contains(1, 2, 3);
        assertThat(kept().flatMap(one -> one.input().rig().slack().stream())).anyMatch(slack -> slack.metres() > 0);
        assertThat(kept().map(one -> one.input().load().leanOut().degrees())).anyMatch(degrees -> degrees > 0);
        assertThat(kept().flatMap(one -> one.input().points().stream()))
                .anyMatch(point -> point.strength().isEmpty());
    }

    @Test
    void twoLayoutsOnTheSamePointsStandSideBySide() {
        assertThat(stations()
                        .filter(station -> kept().filter(one -> one.station().equals(station))
                                        .map(one -> List.of(
                                                one.input().points(),
                                                one.input().load()))
                                        .distinct()
                                        .count()
                                < station.analyses().size()))
                .extracting(station -> station.station().name())
                .containsExactly("大緞帳 三");
    }

    @Test
    void noneWasMadeBeforeItsPointsWerePlaced() {
        assertThat(kept())
                .allSatisfy(one -> assertThat(one.input().points().stream()
                                .flatMap(point -> part(one.anchor(), point.name()).orElseThrow().placed().stream())
                                .filter(placed -> placed.earliest()
                                        .isAfter(one.analysis().on().latest())))
                        .isEmpty());
    }
}
