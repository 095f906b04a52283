package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.body.ThingBody;
import thalweg.exchange.json.RecordsHash;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.InputException;
import thalweg.ledger.Hash;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.SheetNumber;
import thalweg.logbook.Trip;
import thalweg.route.PartialDate;
import thalweg.route.Station;
import thalweg.sheet.Paper;
import thalweg.units.UnitSystem;

final class GiveSheetTest {

    @TempDir
    private Path folder = Path.of("");

    private Optional<Long> give(Session session, String file, String to) {
        return new GiveSheet(session, LoadPhrases.english(), "1.2.3")
                .write(
                        new FindRecord(session).canyon("Probe"),
                        new SheetOrder(MakeSheet.Format.TEXT, Paper.A4, UnitSystem.METRIC, Optional.empty(), folder),
                        folder.resolve(file),
                        false,
                        to)
                .map(SheetNumber::number);
    }

    private String read(String file) {
        try {
            return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<GivenSheet> given(Session session) {
        return new ListGiven(session).of(Optional.empty());
    }

    @Test
    void aSheetThatIsGivenToNobodyIsNumberedAllTheSame() {
        try (Desk desk = new Desk()) {
            assertThat(give(desk.session(), "a.txt", " ")).contains(1L);

            SheetGiven noted = given(desk.session()).get(0).entry().content();
            assertThat(noted.to()).isEmpty();
            assertThat(read("a.txt")).contains("Probe", "sheet " + noted.mark().print());
        }
    }

    @Test
    void theLettersOfANumberFollowFromWhatTheSheetWasMadeFrom() {
        try (Desk desk = new Desk()) {
            give(desk.session(), "a.txt", "");
            SheetGiven noted = given(desk.session()).get(0).entry().content();
            SheetNumber elsewhere = SheetNumber.of(1, noted.canyon(), Hash.of("other records"));

            assertThat(noted.mark().print()).matches("1-[0-9a-f]{6}");
            assertThat(SheetNumber.parse("1").fits(noted.mark())).isTrue();
            assertThat(SheetNumber.parse(noted.mark().print()).fits(noted.mark()))
                    .isTrue();
            assertThat(elsewhere.fits(noted.mark())).isFalse();
        }
    }

    @Test
    void takingBackPassesOverSheetsThatWereWritten() {
        try (Desk desk = new Desk()) {
            Session session = desk.session();
            Station before = desk.station().station();
            new SaveThing(session).changed(ThingBody.of(before), ThingBody.of(named(before, "second")));
            give(session, "a.txt", "");

            new TakeBack(session).undo();
            assertThat(desk.station().station().name()).isEqualTo(before.name());
            give(session, "b.txt", "");
            new TakeBack(session).redo();
            assertThat(desk.station().station().name()).isEqualTo("second");
            assertThat(given(session)).hasSize(2);
        }
    }

    private static Station named(Station before, String name) {
        return new Station(
                before.uid(),
                before.obstacle(),
                before.order(),
                name,
                before.side(),
                before.ropeNeeded(),
                before.position(),
                Optional.empty(),
                before.prose());
    }

    @Test
    void aSheetThatIsGivenBearsItsNumberAndNotToWhom() {
        try (Desk desk = new Desk()) {
            assertThat(give(desk.session(), "a.txt", "Kurs Vordertal")).contains(1L);
            assertThat(give(desk.session(), "b.txt", "Ana")).contains(2L);

            assertThat(read("a.txt")).contains("sheet 1").doesNotContain("Vordertal");
            assertThat(read("b.txt")).contains("sheet 2").doesNotContain("Ana");
            assertThat(given(desk.session()))
                    .extracting(one -> one.entry().content())
                    .usingRecursiveFieldByFieldElementComparatorIgnoringFields("ledger")
                    .containsExactly(note(desk, "Ana", 2, "b.txt"), note(desk, "Kurs Vordertal", 1, "a.txt"));
        }
    }

    private static SheetGiven note(Desk desk, String to, long number, String file) {
        return new SheetGiven(
                desk.canyon().canyon().uid(),
                PartialDate.parse("2026-11-25"),
                to,
                number,
                file,
                RecordsHash.of(desk.canyon()),
                Optional.empty());
    }

    @Test
    void aSheetTellsWhetherTheRecordsSayMoreSince() {
        try (Desk desk = new Desk()) {
            Session session = desk.session();
            give(session, "a.txt", "Ana");
            assertThat(given(session)).extracting(GivenSheet::changedSince).containsExactly(false);

            Trip trip = new Trip(
                    session.mint(),
                    desk.canyon().canyon().uid(),
                    Trip.State.PLANNED,
                    Optional.empty(),
                    "private",
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    "");
            new SaveThing(session).anew(ThingBody.of(trip));
            assertThat(given(session)).extracting(GivenSheet::changedSince).containsExactly(false);

            Station before = desk.station().station();
            Station after = named(before, "second");
            new SaveThing(session).changed(ThingBody.of(before), ThingBody.of(after));
            assertThat(given(session)).extracting(GivenSheet::changedSince).containsExactly(true);

            new SaveThing(session).changed(ThingBody.of(after), ThingBody.of(before));
            assertThat(given(session)).extracting(GivenSheet::changedSince).containsExactly(false);
        }
    }

    @Test
    void whatCannotBeWrittenIsNotNotedAndUsesUpNoNumber() throws IOException {
        try (Desk desk = new Desk()) {
            Files.writeString(folder.resolve("there.txt"), "mine");

            assertThatThrownBy(() -> give(desk.session(), "there.txt", "Ana"))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("there.txt is there already");
            assertThatThrownBy(() -> give(desk.session(), "a.txt", "n".repeat(121)))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("to: is longer than 120 characters");

            assertThat(given(desk.session())).isEmpty();
            assertThat(read("there.txt")).isEqualTo("mine");
            assertThat(folder.resolve("a.txt")).doesNotExist();
            assertThat(give(desk.session(), "b.txt", "Ana")).contains(1L);
        }
    }

    @Test
    void aNumberThatWasTakenMeanwhileIsRefused() {
        try (Desk desk = new Desk()) {
            give(desk.session(), "a.txt", "Ana");
            SheetGiven same = given(desk.session()).get(0).entry().content();

            assertThatThrownBy(() -> new AddEntries(desk.session()).sheetGiven(same))
                    .isInstanceOf(ChangedMeanwhileException.class)
                    .hasMessageContaining("The number 1 was given to another sheet meanwhile");
        }
    }

    @Test
    void aSheetThatWasWrittenButCouldNotBeNotedIsSaidToBe() {
        try (Desk desk = new Desk()) {
            give(desk.session(), "a.txt", "Ana");
            SheetGiven same = given(desk.session()).get(0).entry().content();
            Path written = folder.resolve("b.txt");

            assertThatThrownBy(() -> new GiveSheet(desk.session(), LoadPhrases.english(), "1.2.3").note(same, written))
                    .isInstanceOf(InputException.class)
                    .hasMessage("The sheet was written to " + written + ", but that it was given to Ana was not noted:"
                            + " The number 1 was given to another sheet meanwhile. Write the sheet again to note it.");
        }
    }

    @Test
    void aDatabaseThatIsOnlyReadRefusesBeforeAnythingIsWritten() {
        Path file = folder.resolve("records.db");
        try (Session session = Session.creating(file, Desk.CLOCK, "ada")) {
            Desk.fill(session);
        }
        try (Session session = Session.reading(file, Desk.CLOCK, "ada")) {
            assertThatThrownBy(() -> give(session, "a.txt", "Ana"))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("leave that empty to write the sheet alone");
            assertThat(folder.resolve("a.txt")).doesNotExist();
            assertThat(give(session, "a.txt", "")).isEmpty();
            assertThat(folder.resolve("a.txt")).exists();
        }
    }
}
