package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.body.ThingBody;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.table.RowReport;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.TablePlan;
import thalweg.exchange.table.Understood;
import thalweg.json.Json;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.progress.Progress;
import thalweg.route.ObstacleKind;
import thalweg.route.Side;

/** Tables as people write them, and what of them is refused. */
final class ImportTableTest {

    private final Desk desk = new Desk();

    @AfterEach
    void close() {
        desk.close();
    }

    private static Table table(String csv) {
        ImportTable.Read read = ImportTable.read(csv.getBytes(StandardCharsets.UTF_8), Optional.empty());
        assertThat(read.findings()).isEmpty();
        return read.table();
    }

    private TablePlan plan(TableKind kind, String csv) {
        Table table = table(csv);
        return new ImportTable(desk.session())
                .preview(table, ImportTable.guess(table, kind), Progress.UNWATCHED)
                .plan();
    }

    private void accept(TablePlan plan) {
        assertThat(refusals(plan)).isEmpty();
        new ImportRecords(desk.session()).accept(plan.plan());
    }

    private static List<String> refusals(TablePlan plan) {
        return plan.rows().stream()
                .flatMap(row -> row.said().stream().map(why -> row.line() + ": " + why))
                .toList();
    }

    private static List<RowReport.State> states(TablePlan plan) {
        return plan.rows().stream().map(RowReport::state).toList();
    }

    @Test
    void aSpanishTableIsUnderstoodByItsHeadingsAndWords() {
        String csv = """
                Barranco;Número;Tipo;Altura (m);Reunión;Orilla;Cuerda [ft];Observaciones
                Nuevo;1;rápel;12,5;R1;izquierda;45;"dos
                líneas"
                Nuevo;2;tobogán;4;;;;
                """;

        assertThat(ImportTable.kind(table(csv))).contains(TableKind.STATIONS);
        TablePlan plan = plan(TableKind.STATIONS, csv);
        assertThat(states(plan)).containsExactly(RowReport.State.NEW, RowReport.State.NEW);
        accept(plan);

        CanyonRecord canyon = new FindRecord(desk.session()).canyon("nuevo");
        LineRecord first = canyon.line().get(0);
        assertThat(first.obstacle().kind()).isEqualTo(ObstacleKind.DROP);
        assertThat(first.obstacle().height().orElseThrow().inCentimetres()).isEqualTo(1250);
        assertThat(first.stations().get(0).station().side()).contains(Side.LEFT);
        assertThat(first.stations().get(0).station().ropeNeeded().orElseThrow().inCentimetres())
                .isEqualTo(1372);
        assertThat(canyon.line().get(1).obstacle().kind()).isEqualTo(ObstacleKind.SLIDE);
        assertThat(canyon.line().get(1).stations()).isEmpty();
    }

    @Test
    void aFrenchTableOfLooksFindsTheParts() {
        String csv = "Canyon,N°,Relais,Élément,Date,État,Par\nPROBE,1,First,LEFT bolt,14.06.2025,usé,Ada\n";

        accept(plan(TableKind.INSPECTIONS, csv));

        Inspection newest = desk.station().parts().get(0).counting().get(0);
        assertThat(newest.found()).contains(Condition.WORN);
        assertThat(newest.on().print()).isEqualTo("2025-06-14");
        assertThat(newest.by()).isEqualTo("Ada");
    }

    @Test
    void theSameLookTwiceIsThereAlready() {
        String csv = """
                canyon,station,part,on,found
                Probe,first,right bolt,2025-06-14,worn
                Probe,first,right bolt,2025-06-14,worn
                """;

        TablePlan plan = plan(TableKind.INSPECTIONS, csv);
        assertThat(states(plan)).containsExactly(RowReport.State.NEW, RowReport.State.SAME);
        accept(plan);

        TablePlan again = plan(TableKind.INSPECTIONS, csv);
        assertThat(states(again)).containsOnly(RowReport.State.SAME);
        assertThat(again.plan().isEmpty()).isTrue();
    }

    @Test
    void anEmptyCellLeavesWhatIsHere() {
        TablePlan plan = plan(
                TableKind.STATIONS, "canyon,place,place_name,height_cm,station,side\nProbe,1,Long one,,first,right\n");

        assertThat(states(plan)).containsExactly(RowReport.State.CHANGED);
        assertThat(plan.plan().changes())
                .extracting(ImportPlan.FieldChange::field)
                .containsExactlyInAnyOrder("name", "side");
        accept(plan);
        assertThat(desk.canyon().line().get(0).obstacle().height().orElseThrow().inCentimetres())
                .isEqualTo(1800);
    }

    @Test
    void oneRefusedRowKeepsTheWholeFileOut() {
        TablePlan plan = plan(
                TableKind.STATIONS,
                "canyon,place,place_kind,height,station\nProbe,2,drop,20 m,second\nProbe,3,drop,20,third\n");

        assertThat(states(plan)).containsExactly(RowReport.State.NEW, RowReport.State.REFUSED);
        assertThat(plan.isRefused()).isTrue();
        assertThat(plan.plan().isEmpty()).isTrue();
        assertThat(refusals(plan))
                .containsExactly(
                        "3: height: \"20\" has no unit; write 20 m or 20 ft, or name the unit in the heading, as"
                                + " \"(m)\".");
    }

    @Test
    void everythingThatIsWrongWithARowIsToldAtOnce() {
        TablePlan plan = plan(
                TableKind.PARTS,
                "canyon,station,part,kind,placed,strength,right\nProbe,first,new bolt,bolted,2027-01-01,25,1 m\n");

        assertThat(refusals(plan)).hasSize(4);
        assertThat(refusals(plan).toString())
                .contains(
                        "\"bolted\" is none of the words", "has not come yet", "\"25\" has no unit", "belong together");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "canyon,station,part,on,found;Probe,first,middle bolt,2025,worn | has no part \"middle bolt\"",
                "canyon,station,part,on,found;Elsewhere,first,left bolt,2025,worn | There is no canyon named \"Elsewhere\"",
                "canyon,station,part,on,found;Probe,first,left bolt,2030,worn | has not come yet",
                "canyon,station,part,on,found;Probe,first,left bolt,05/06/2025,worn | can be read in two ways",
                "canyon,station,part,on,found;Probe,first,left bolt,2025, | not_seen where the part was looked for in vain",
                "canyon,station,part,on,found,counts;Probe,first,left bolt,2025,worn,no | nothing says why",
                "canyon,station,part,on,found;,first,left bolt,2025,worn | does not say which canyon",
            })
    void aLookThatCannotBeUnderstoodIsRefused(String csv, String why) {
        assertThat(refusals(plan(TableKind.INSPECTIONS, csv.replace(';', '\n'))))
                .singleElement()
                .asString()
                .startsWith("2: ")
                .contains(why);
    }

    @Test
    void twoCanyonsOfOneNameAreBothNamed() {
        Desk.fill(desk.session());
        String csv = "canyon,station,part,on,found\nProbe,first,left bolt,2025,worn\n";

        String refusal = refusals(plan(TableKind.INSPECTIONS, csv)).get(0);

        new ExportRecords(desk.session())
                .orAll(List.of())
                .forEach(canyon ->
                        assertThat(refusal).contains(canyon.canyon().uid().text()));
    }

    @Test
    void aPlaceWithoutThoseBeforeItIsRefused() {
        TablePlan plan =
                plan(TableKind.STATIONS, "canyon,place,place_kind,station\nProbe,4,drop,far\nProbe,2,drop,near\n");

        assertThat(refusals(plan))
                .containsExactly(
                        "2: place: is 4, and it would be number 3 on the line: places before it are missing in the"
                                + " file and here.");
    }

    @Test
    void newPlacesStandInTheOrderOfTheirNumbers() {
        accept(
                plan(
                        TableKind.STATIONS,
                        "canyon,place,place_kind,place_name\nProbe,3,drop,third\nProbe,2,swim,second\nOther,2,jump,b\nOther,1,walk,a\n"));

        assertThat(desk.canyon().line())
                .extracting(place -> place.obstacle().name())
                .containsExactly("", "second", "third");
        assertThat(new FindRecord(desk.session()).canyon("Other").line())
                .extracting(place -> place.obstacle().name())
                .containsExactly("a", "b");
    }

    @Test
    void twoRowsThatContradictEachOtherAreRefused() {
        TablePlan plan = plan(
                TableKind.STATIONS,
                "canyon,place,place_kind,height_cm,station\nProbe,2,drop,900,a\nProbe,2,drop,950,b\n");

        assertThat(refusals(plan))
                .containsExactly("3: height_cm: is not what line 2 says of the same thing; make the two alike.");
    }

    @Test
    void anInspectionThatWasAlteredAfterItWasExportedIsRefused() {
        String csv = ExportRecords.inspectionsCsv(new ExportRecords(desk.session()).orAll(List.of()));

        assertThat(refusals(plan(TableKind.INSPECTIONS, csv.replace("sound", "worn"))))
                .singleElement()
                .asString()
                .contains("an inspection is never edited");
    }

    @Test
    void columnsThatAreTakenForNothingAreTold() {
        TablePlan plan = plan(TableKind.CANYONS, "name,my stars,region\nProbe,5,Nowhere\n");

        assertThat(plan.leftOut()).containsExactly("my stars");
    }

    @Test
    void coordinatesComeInOneColumnOrTwoAndKeepWhatIsKnownOfThem() {
        accept(plan(TableKind.CANYONS, "name,coordinates\nProbe,\"42.5, -0.25 ± 20 m\"\n"));
        TablePlan same = plan(TableKind.CANYONS, "name,latitude,longitude\nProbe,\"42,5\",'-0.25\n");
        TablePlan half = plan(TableKind.CANYONS, "name,latitude,longitude\nProbe,42.5,\n");

        assertThat(states(same)).containsExactly(RowReport.State.SAME);
        assertThat(refusals(half)).singleElement().asString().contains("latitude and longitude belong together");
    }

    @Test
    void whatWasTakenOutDoesNotComeBackUnasked() {
        CanyonRecord canyon = desk.canyon();
        String csv = ExportRecords.partsCsv(List.of(canyon));
        new SaveThing(desk.session())
                .removed(ThingBody.of(desk.station().parts().get(0).part()), "rusted");

        assertThat(refusals(plan(TableKind.PARTS, csv)))
                .singleElement()
                .asString()
                .contains("was taken out here (part); the list of changes brings it back");
    }

    @Test
    void theFirstRowsAreShownAsTheyAreUnderstood() {
        Table table = table("name,longest drop,approach time\nProbe,60 ft,1:30\n");

        List<Understood> first = new ImportTable(desk.session())
                .preview(table, ImportTable.guess(table, TableKind.CANYONS), Progress.UNWATCHED)
                .first();

        assertThat(first.get(0).values())
                .extracting(Understood.Value::value)
                .containsExactly(Json.of("Probe"), Json.of(1829), Json.of(90));
    }
}
