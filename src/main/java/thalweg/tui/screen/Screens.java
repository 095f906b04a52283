package thalweg.tui.screen;

import java.util.Optional;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Screen;

/** Makes the screen of each place to go: the one spot where a new screen is hung in. */
public final class Screens {

    private Screens() {}

    /** The screen of that place, as it opens. */
    public static Screen of(Destination destination) {
        if (destination instanceof Go.Canyons) {
            return CanyonsScreen.opened();
        }
        if (destination instanceof Go.TakeIn go) {
            return TakeInScreen.of(go);
        }
        if (destination instanceof Go.BackUp) {
            return BackUpScreen.opened();
        }
        if (destination instanceof Go.Drafts) {
            return DraftsScreen.opened();
        }
        if (destination instanceof Go.Parts) {
            return PartsScreen.opened();
        }
        if (destination instanceof Go.Stations) {
            return StationsScreen.opened();
        }
        if (destination instanceof Go.DueParts go) {
            return DueScreen.opened(go);
        }
        if (destination instanceof Go.OneCanyon go) {
            return CanyonScreen.opened(go.canyon());
        }
        if (destination instanceof Go.CanyonProfile go) {
            return ProfileScreen.opened(go);
        }
        if (destination instanceof Go.OneStation go) {
            return StationScreen.opened(go);
        }
        if (destination instanceof Go.OnePart go) {
            return PartScreen.opened(go);
        }
        if (destination instanceof Go.OverTheYears go) {
            return TimelineScreen.opened(go);
        }
        if (destination instanceof Go.Rounds go) {
            return RoundsScreen.opened(go.canyon());
        }
        if (destination instanceof Go.Changes go) {
            return ChangesScreen.opened(go);
        }
        if (destination instanceof Go.MoveTo go) {
            return MoveScreen.opened(go);
        }
        if (destination instanceof Go.Compare go) {
            return CompareScreen.of(go);
        }
        if (destination instanceof Go.Why go) {
            return WhyScreen.of(go);
        }
        if (destination instanceof Go.Rig go) {
            return RigScreen.of(go);
        }
        if (destination instanceof Go.Trips go) {
            return TripsScreen.opened(go);
        }
        if (destination instanceof Go.OneTrip go) {
            return TripScreen.opened(go.trip());
        }
        if (destination instanceof Go.Given go) {
            return GivenScreen.opened(go);
        }
        if (destination instanceof Go.Read go) {
            return ReadScreen.of(go);
        }
        if (destination instanceof Go.PlaceWaypoints go) {
            return PlacingScreen.of(go);
        }
        return FormScreen.of(form(destination));
    }

    /** The form of a place to edit. */
    static FormTask form(Destination destination) {
        if (destination instanceof Go.EditCanyon go) {
            return new CanyonForm(go.uid(), go.canyon());
        }
        if (destination instanceof Go.EditObstacle go) {
            return new ObstacleForm(go);
        }
        if (destination instanceof Go.EditStation go) {
            return new StationForm(go);
        }
        if (destination instanceof Go.EditAnchor go) {
            return new AnchorForm(go);
        }
        if (destination instanceof Go.EditPart go) {
            return new PartForm(go);
        }
        if (destination instanceof Go.GoDown go) {
            return new DownForm(go);
        }
        if (destination instanceof Go.Inspect go) {
            return new VisitForm(go);
        }
        if (destination instanceof Go.Replace go) {
            return new ReplaceForm(go);
        }
        if (destination instanceof Go.CorrectInspection go) {
            return new InspectionForm(go);
        }
        if (destination instanceof Go.EditRound go) {
            return new RoundForm(go);
        }
        if (destination instanceof Go.Withdraw go) {
            return new WithdrawForm(go);
        }
        if (destination instanceof Go.TakeOut go) {
            return new TakeOutForm(go);
        }
        if (destination instanceof Go.WriteNote go) {
            return new NoteForm(go.station(), go.stationName(), Optional.empty());
        }
        if (destination instanceof Go.CorrectNote go) {
            return new NoteForm(go.wrong().content().station(), go.stationName(), Optional.of(go.wrong()));
        }
        if (destination instanceof Go.WriteCanyons go) {
            return WriteListForm.of(go);
        }
        if (destination instanceof Go.WriteParts go) {
            return WriteListForm.of(go);
        }
        if (destination instanceof Go.WriteStations go) {
            return WriteListForm.of(go);
        }
        if (destination instanceof Go.WriteDue go) {
            return WriteListForm.of(go);
        }
        if (destination instanceof Go.SetKeeper) {
            return new KeeperForm();
        }
        if (destination instanceof Go.MatchColumns go) {
            return new ColumnsForm(go.table());
        }
        if (destination instanceof Go.ReadRecords) {
            return new ImportForm();
        }
        if (destination instanceof Go.WriteSheet go) {
            return new SheetForm(go);
        }
        if (destination instanceof Go.WriteSheets go) {
            return new ManySheetsForm(go);
        }
        if (destination instanceof Go.ReadWaypoints go) {
            return new WaypointsForm(go);
        }
        if (destination instanceof Go.EditTrip go) {
            return new TripForm(go);
        }
        if (destination instanceof Go.TypeTimes go) {
            return new TripTimesForm(go);
        }
        if (destination instanceof Go.TakeOutTrip go) {
            return new TakeOutTripForm(go.trip());
        }
        if (destination instanceof Go.EditPrivateNote go) {
            return new PrivateNoteForm(go);
        }
        throw new AssertionError("no screen for " + destination);
    }
}
