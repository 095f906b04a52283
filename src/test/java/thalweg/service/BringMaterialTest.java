package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.due.DueRules;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.StationRecord;
import thalweg.plan.Bring;
import thalweg.plan.BringMaterial;
import thalweg.plan.KeptMaterial;
import thalweg.rig.RigMaterial;
import thalweg.settings.Settings;
import thalweg.settings.TripFigure;
import thalweg.units.Length;

/** What is brought for a canyon whose every part is counted by hand. */
class BringMaterialTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

    /**
     * At A the webbing is worn, the link gone, the bolt unsafe; at B, of two anchors, the cord is sound but of unknown age,
     * the other sling was replaced in summer; place 3 has nothing entered.
     */
    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [{"name": "Probe", "line": [
              {"kind": "drop", "stations": [{"name": "A", "anchors": [{"role": "main", "parts": [
                {"label": "bolt", "kind": "bolt", "inspections": [{"on": "2026-11-01", "found": "unsafe"}]},
                {"label": "webbing", "kind": "webbing", "placed": "2026-05-01",
                 "inspections": [{"on": "2026-11-01", "found": "worn"}]},
                {"label": "link", "kind": "quick_link", "inspections": [{"on": "2026-11-01", "found": "gone"}]}]}]}]},
              {"kind": "drop", "stations": [{"name": "B", "anchors": [
                {"role": "main", "parts": [
                  {"label": "left", "kind": "bolt", "inspections": [{"on": "2026-11-01", "found": "sound"}]},
                  {"label": "cord", "kind": "cord", "inspections": [{"on": "2026-11-01", "found": "sound"}]}]},
                {"role": "high_water", "parts": [
                  {"label": "left", "kind": "bolt", "inspections": [{"on": "2026-11-01", "found": "sound"}]},
                  {"label": "tree", "kind": "tree", "inspections": [{"on": "2026-11-01", "found": "sound"}]},
                  {"label": "sling", "kind": "sling", "placed": "2026-06-01",
                   "inspections": [{"on": "2026-11-01", "found": "sound"}]}]}]}]},
              {"kind": "drop", "name": "Blank"}]}]}
            """;

    private static CanyonRecord canyon() {
        try (Session session = Session.inMemory(Desk.CLOCK, "ada")) {
            ImportRecords records = new ImportRecords(session);
            records.accept(records.preview("probe", RECORDS.getBytes(StandardCharsets.UTF_8))
                    .plan());
            return new FindRecord(session).canyon("Probe");
        }
    }

    private static KeptMaterial rig(List<String> points, double metres, String... unknown) {
        return new KeptMaterial(
                points,
                new RigMaterial(
                        List.of(new RigMaterial.Piece(1, new Length(metres), Sentence.plain("loop"))),
                        2,
                        1,
                        false,
                        List.of(unknown)),
                false);
    }

    private static Bring bring(Map<String, List<KeptMaterial>> kept, LocalDate day) {
        Settings settings = new Settings(List.of());
        return BringMaterial.of(
                canyon(),
                new DueRules(settings, day),
                day,
                station -> kept.getOrDefault(name(station), List.of()),
                TripFigure::standard);
    }

    private static String name(StationRecord station) {
        return station.station().name();
    }

    private static Optional<Bring.Item> textile(Bring bring, String station) {
        return bring.items().stream()
                .filter(item -> item.kind() != Bring.Kind.LINK)
                .filter(item -> item.parts().get(0).station().equals(station))
                .findFirst();
    }

    @Test
    void withoutAnAnalysisLengthsAreByRuleAndTheReserveComesOnTop() {
        Bring bring = bring(Map.of(), DAY);

        assertThat(bring.items()).hasSize(3);
        assertThat(textile(bring, "A").orElseThrow().basis()).isEqualTo(Bring.Basis.RULE);
        assertThat(bring.webbing().metres()).isCloseTo(6 + 6, within(1e-9));
        assertThat(bring.cord().metres()).isCloseTo(6 + 3, within(1e-9));
        assertThat(bring.links()).isEqualTo(1 + 2);
        assertThat(bring.notReplaced()).extracting(Bring.Needy::label).containsExactly("bolt");
        assertThat(bring.notEntered()).containsExactly("#3 Blank");
    }

    @Test
    void theNewestAnalysisOfTheAnchorSaysHowMuchToCut() {
        Bring bring = bring(Map.of("A", List.of(rig(List.of("bolt"), 4.25), rig(List.of("bolt"), 9))), DAY);

        assertThat(textile(bring, "A").orElseThrow().basis()).isEqualTo(Bring.Basis.RIG);
        assertThat(bring.webbing().metres()).isCloseTo(4.25 + 6, within(1e-9));
    }

    @Test
    void aSlingOfUnknownGirthCountsByRule() {
        Bring bring = bring(Map.of("A", List.of(rig(List.of("bolt"), 4.25, "bolt"))), DAY);

        Bring.Item item = textile(bring, "A").orElseThrow();
        assertThat(item.basis()).isEqualTo(Bring.Basis.RIG_AND_RULE);
        assertThat(item.roundUnknown()).containsExactly("bolt");
        assertThat(item.length().orElseThrow().metres()).isCloseTo(4.25 + 6, within(1e-9));
    }

    @Test
    void anAnalysisThatMayBeOfAnotherAnchorSaysNothing() {
        Bring either = bring(Map.of("B", List.of(rig(List.of("left"), 2))), DAY);
        Bring other = bring(Map.of("B", List.of(rig(List.of("left", "tree"), 2))), DAY);

        assertThat(textile(either, "B").orElseThrow().basis()).isEqualTo(Bring.Basis.RULE);
        assertThat(textile(other, "B").orElseThrow().basis()).isEqualTo(Bring.Basis.RULE);
    }

    @Test
    void aTripLaterNeverBringsLess() {
        Bring before = bring(Map.of(), LocalDate.of(2026, 11, 2));
        for (int months = 1; months < 60; months++) {
            Bring after = bring(Map.of(), LocalDate.of(2026, 11, 2).plusMonths(months));

            assertThat(after.webbing().metres())
                    .isGreaterThanOrEqualTo(before.webbing().metres());
            assertThat(after.links()).isGreaterThanOrEqualTo(before.links());
            before = after;
        }
        assertThat(before.webbing().metres()).isCloseTo(2 * 6 + 6, within(1e-9));
    }
}
