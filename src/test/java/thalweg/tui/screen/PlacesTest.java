package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.amend.Contents;
import thalweg.body.ThingBody;
import thalweg.exchange.table.TableReader;
import thalweg.json.Findings;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonName;
import thalweg.logbook.Finding;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationOrder;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.placing.Placing;
import thalweg.rig.Analyze;
import thalweg.rig.RigInput;
import thalweg.rig.RigStudy;
import thalweg.service.AnalyzeRig;
import thalweg.service.FindRecord;
import thalweg.service.ImportRecords;
import thalweg.service.ImportTable;
import thalweg.service.LoadPhrases;
import thalweg.service.ReadWaypoints;
import thalweg.settings.Settings;
import thalweg.testing.RandomRecords;
import thalweg.why.Question;

final class PlacesTest {

    @Test
    void everyPlaceToGoHasAScreen() {
        try (Walk walk = Walk.sample(24, 80)) {
            List<Go> places = places(walk);

            List<Class<?>> kinds = new ArrayList<>();
            places.forEach(place -> kinds.add(place.getClass()));
            assertThat(kinds).containsExactlyInAnyOrderElementsOf(Arrays.asList(Go.class.getPermittedSubclasses()));
            places.forEach(place -> assertThat(Screens.of(place)).isNotNull());
        }
    }

    /** One of each kind. */
    static List<Go> places(Walk walk) {
        StationRecord station =
                new FindRecord(walk.session()).station("éclusaune/porte").station();
        AnchorRecord anchor = station.anchors().get(0);
        PartRecord part = station.parts().get(0);
        Uid uid = walk.session().mint();
        String order = OrderKey.between("", "");
        CanyonName canyon = new FindRecord(walk.session()).canyon("éclusaune").named();
        Trip trip = new RandomRecords(1, RandomRecords.Fill.NOTHING).things().trip(uid, uid);
        RigInput rig = AnalyzeRig.read(Path.of("sample-data/rigs/two-bolts-level.json"));
        return List.of(
                new Go.Canyons(),
                new Go.Parts(),
                new Go.ReadRecords(),
                new Go.TakeIn(
                        "records.json",
                        new ImportRecords(walk.session())
                                .preview(
                                        "records.json",
                                        "{\"format\": \"thalweg records\", \"version\": 1, \"canyons\": []}"
                                                .getBytes(StandardCharsets.UTF_8))
                                .plan()),
                new Go.MatchColumns(table("name,region\nProbe,\n")),
                new Go.BackUp(),
                new Go.Drafts(),
                new Go.SetKeeper(),
                new Go.WriteCanyons(Finding.ALL, 9),
                new Go.WriteSheets(Finding.ALL, 9),
                new Go.WriteParts("bolt"),
                new Go.Stations(),
                new Go.WriteStations("porte", StationOrder.LOOKED),
                new Go.DueParts(Optional.of(canyon)),
                new Go.WriteDue(
                        new Ask.FindDue("bolt", Optional.empty(), 0, Settings.standard(LoadPhrases.english()), 100)),
                new Go.OneCanyon(canyon.uid()),
                new Go.CanyonProfile(canyon.uid(), Optional.empty()),
                new Go.OneStation(canyon.uid(), station.station().uid()),
                new Go.EditCanyon(uid, Optional.empty()),
                new Go.EditObstacle(uid, uid, order, Optional.empty()),
                new Go.EditStation(uid, uid, order, Optional.empty()),
                new Go.EditAnchor(uid, uid, order, Optional.empty()),
                new Go.EditPart(uid, uid, order, Optional.empty()),
                new Go.OnePart(canyon.uid(), part.part().uid()),
                new Go.OverTheYears(canyon.uid(), station.station().uid(), Optional.empty()),
                new Go.Rounds(canyon.uid()),
                new Go.GoDown(new FindRecord(walk.session()).canyon("éclusaune")),
                new Go.Changes(Optional.empty(), ""),
                new Go.CorrectInspection(part, part.inspections().get(0), List.of()),
                new Go.CorrectNote("Porte", station.notes().get(0)),
                new Go.EditRound(uid, "Éclusaune", Optional.empty()),
                new Go.Withdraw(uid, "rigging note"),
                new Go.TakeOut(ThingBody.of(part.part()), Contents.NOTHING),
                new Go.MoveTo(ThingBody.of(part.part()), List.of()),
                new Go.Inspect(station, List.of(), Optional.empty()),
                new Go.Replace(part, List.of()),
                new Go.WriteNote(uid, "Porte"),
                new Go.Rig(station, anchor),
                new Go.Compare(rig, true),
                new Go.Why(Question.of(RigStudy.of(Analyze.of(rig)), List.of())),
                new Go.WriteSheet(uid, "Éclusaune", LocalRecord.NOTHING),
                new Go.ReadWaypoints(Optional.empty(), uid),
                new Go.PlaceWaypoints(
                        Placing.start(
                                new FindRecord(walk.session()).canyon("éclusaune"),
                                false,
                                ReadWaypoints.typed(PlacingWalkTest.FILES + "minimal.gpx")
                                        .file()
                                        .waypoints()),
                        "minimal.gpx",
                        List.of()),
                new Go.Trips(Optional.empty()),
                new Go.OneTrip(uid),
                new Go.TypeTimes(trip, uid, "5 Rideau"),
                new Go.EditTrip(uid, canyon, Optional.empty()),
                new Go.TakeOutTrip(new TripInCanyon(trip, canyon)),
                new Go.Given(Optional.empty()),
                new Go.EditPrivateNote(uid, "Porte", List.of()),
                new Go.Read("title", List.of()));
    }

    private static Told.TableRead table(String text) {
        return new Told.TableRead(
                "in.csv",
                text,
                TableReader.read(text, Optional.empty(), new Findings()),
                List.of(),
                Optional.empty(),
                ImportTable.allWords());
    }
}
