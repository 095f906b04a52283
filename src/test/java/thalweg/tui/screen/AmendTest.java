package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.service.CheckDatabase;
import thalweg.service.FindRecord;
import thalweg.tui.core.Key;

/** Putting right what was found, taking out, taking back, on the screen. */
final class AmendTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk atPorte() {
        return atPorte(24, 80);
    }

    private static Walk atPorte(int rows, int columns) {
        Walk walk = Walk.sample(rows, columns);
        return walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    private static StationRecord porte(Walk walk) {
        return new FindRecord(walk.session()).station("éclusaune/porte").station();
    }

    private static PartRecord ring(Walk walk) {
        return FindRecord.part(porte(walk), "ring");
    }

    private static Walk atRing(int rows, int columns) {
        return atPorte(rows, columns).press(Key.Named.DOWN, 5).press(Key.Named.ENTER);
    }

    @Test
    void aPartOpensWithEverythingThatWasFoundOnIt() {
        try (Walk walk = atRing(24, 80)) {
            assertThat(walk.screen())
                    .contains("Porte / main anchor / ring", "> ring  ring", "2025-09-06  ~ worn  (water low")
                    .contains("Strength as rated new: unknown", "First polish on the inside.");
        }
    }

    @Test
    void aCorrectionKeepsBothAndOnlyTheNewOneCounts() {
        try (Walk walk = atRing(24, 80)) {
            walk.press(Key.Named.DOWN).type("e");
            assertThat(walk.screen())
                    .contains("Correct an inspection of ring", "> As found", "< worn >")
                    .contains("Work: tightened", "Reason");

            walk.press(SAVE);
            assertThat(walk.screen()).contains("Reason: This must be filled in.");

            walk.type("one groove is deeper").press(Key.Named.TAB).type("d").press(SAVE);
            assertThat(walk.screen())
                    .contains("Saved.", "2026-09-19  ? doubtful  (water low, Maëlle")
                    .contains("corrected");
            assertThat(ring(walk).state().condition()).contains(Condition.DOUBTFUL);
            assertThat(ring(walk).inspections()).hasSize(6);

            walk.press(Key.Named.ENTER);
            assertThat(walk.screen().replaceAll("\\s+", " "))
                    .contains(
                            "corrected by the entry of 2026-09-19, by ada, 2026-11-25 12:00 UTC: one groove is deeper")
                    .contains("written down by");
        }
    }

    @Test
    void aWithdrawnEntryStaysFaintAndCountsNoLonger() {
        try (Walk walk = atRing(24, 80)) {
            walk.press(Key.Named.DOWN).press(Key.Named.DELETE);
            assertThat(walk.screen()).contains("Withdraw an entry", "ring, 2026-09-19  ~ worn", "counts no longer");

            walk.press(SAVE);
            assertThat(walk.screen()).contains("Reason: This must be filled in.");
            walk.type("that was another ring").press(SAVE);

            assertThat(walk.screen()).contains("withdrawn", "ring  ring, stainless steel 316L", "~ worn  2025-09-06");
            Entry<Inspection> entry = ring(walk).inspections().get(0);
            assertThat(entry.counts()).isFalse();

            walk.type("e");
            assertThat(walk.screen()).contains("This entry was corrected or withdrawn and counts no longer.");
            walk.type("x");
            assertThat(walk.screen()).contains("This entry was corrected or withdrawn and counts no longer.");
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("withdrawn: that was another ring, by ada, 2026-11-25 12:00 UTC");
        }
    }

    @Test
    void aNoteIsCorrectedInItsOwnForm() {
        try (Walk walk = atPorte()) {
            walk.press(Key.Named.DOWN, 6).type("e");
            assertThat(walk.screen()).contains("Correct the rigging note on Porte", "Single strand, releasable.");

            walk.press(SAVE).type("the other ring").press(SAVE);
            assertThat(walk.screen()).contains("Nothing differs from the entry as it is");

            walk.press(Key.Named.TAB, 2).type("!").press(SAVE);
            assertThat(walk.screen()).contains("Saved.", "corrected");
            assertThat(porte(walk).countingNotes()).hasSize(porte(walk).notes().size() - 1);
        }
    }

    @Test
    void anAnalysisIsWithdrawnButNeverCorrected() {
        try (Walk walk = atPorte()) {
            walk.type("r").type("o").confirmStart().press(SAVE).type("a").press(Key.Named.ESCAPE);
            walk.press(Key.Named.END).type("e");
            assertThat(walk.screen()).contains("An analysis is never corrected; withdraw it and attach another.");

            int before = porte(walk).countingAnalyses().size();
            walk.type("x").type("wrong load").press(SAVE);
            assertThat(porte(walk).countingAnalyses()).hasSize(before - 1);
        }
    }

    @Test
    void whatGoesWithAStationIsSaidBeforeItIsTakenOut() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).type("x");
            assertThat(walk.screen())
                    .contains("Take out of use: station Porte")
                    .contains("It goes together with 1 anchor and 4 parts. Nothing is lost");

            walk.type("rockfall").press(SAVE);
            assertThat(walk.screen()).contains("Saved.").doesNotContain("     Porte");

            walk.type("z");
            assertThat(walk.screen()).contains("Taken back: took station Porte out of use: rockfall", "     Porte");
            walk.type("Z");
            assertThat(walk.screen())
                    .contains("Brought again: took station Porte out of use: rockfall")
                    .doesNotContain("     Porte");
        }
    }

    @Test
    void aCanyonThatIsTakenOutIsGoneEverywhereAndComesBack() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("x");
            assertThat(walk.screen()).contains("Take out of use: canyon Gorge de l'Éclusaune", "places,");
            walk.type("closed for good").press(SAVE);
            assertThat(walk.screen()).doesNotContain("Gorge de");

            walk.type("z");
            assertThat(walk.screen()).contains("Taken back: took canyon Gorge", "Gorge de l'Éclusaune (invented)");
            walk.press(Key.Named.UP, 5).press(Key.Named.ENTER).type("Z");
            assertThat(walk.screen()).contains("This canyon was taken out of use.", "Brought again: took canyon Gorge");
            walk.type("z");
            assertThat(walk.screen()).contains("2 drop, 8 m, Porte");
        }
    }

    @Test
    void theStationOnTheScreenCanBeTakenOutAndBroughtBack() {
        try (Walk walk = atPorte()) {
            walk.type("x").type("rebuilt elsewhere").press(SAVE);
            assertThat(walk.screen()).contains("This station was taken out of use.", "Out of use");

            walk.type("z");
            assertThat(walk.screen()).contains("Station Porte", "left bolt");
        }
    }

    @Test
    void undoSaysWhyItCannot() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("z");
            assertThat(walk.screen()).contains("There is no change to take back.");
            walk.type("Z");
            assertThat(walk.screen()).contains("There is nothing to bring again.");
        }
    }

    @Test
    void theChangesAreListedReadTakenBackAndBroughtAgain() {
        try (Walk walk = atPorte()) {
            walk.press(Key.Named.DOWN, 2).type("e").type("!").press(SAVE);
            walk.type("isw").press(SAVE);

            walk.type("h");
            assertThat(walk.screen())
                    .contains("Changes in Gorge de l'Éclusaune")
                    .contains("2026-11-25  ada  added inspection of part left bolt! at Porte");

            walk.press(Key.Named.DOWN).press(Key.Named.ENTER);
            assertThat(walk.screen())
                    .contains(
                            "by ada, 2026-11-25 12:00 UTC",
                            "changed part left bolt!",
                            "label: left bolt -> left bolt!");

            walk.press(Key.Named.ESCAPE).type("t");
            assertThat(walk.screen()).contains("Taken back: changed part left bolt", "taken back");
            assertThat(porte(walk).parts().get(0).part().label()).isEqualTo("left bolt");

            walk.type("t");
            assertThat(walk.screen()).contains("Brought again: changed part left bolt!");
            walk.press(Key.Named.ESCAPE)
                    .press(Key.Named.ESCAPE)
                    .press(Key.Named.ESCAPE)
                    .type("h");
            assertThat(walk.screen()).contains("Gorge de l'Éclusaune: changed part left bolt! at Porte: label");
        }
    }

    @Test
    void aCanyonWithoutRoundsSaysWhatARoundIs() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("nProbe").press(SAVE).press(Key.Named.ENTER).type("r");
            assertThat(walk.screen()).contains("No rounds yet. A round is one visit");
            walk.type("e");
            assertThat(walk.screen()).contains("There is no round.");
        }
    }

    @Test
    void aRoundCarriesDateNameAndWaterIntoItsInspections() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).type("r");
            walk.type("n").press(Key.ctrl('u')).type("2026-11").press(Key.Named.DOWN);
            walk.press(Key.ctrl('u')).type("Bo").press(Key.Named.DOWN).type("l").press(SAVE);
            assertThat(walk.screen()).contains("> 2026-11, Bo, water low", "0 parts");

            walk.press(Key.Named.ESCAPE).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.type("i").press(Key.Named.UP, 4);
            assertThat(walk.screen()).contains("> Round", "< none >");
            walk.press(Key.Named.RIGHT);
            assertThat(walk.screen())
                    .containsPattern("When +2026-11 ")
                    .containsPattern("By +Bo ")
                    .containsPattern("Water +low");
            walk.press(Key.Named.DOWN, 4).type("ws").press(SAVE);
            PartRecord bolt = porte(walk).parts().get(0);
            assertThat(bolt.counting().get(0).by()).isEqualTo("Bo");

            walk.press(Key.Named.ESCAPE).type("r");
            assertThat(walk.screen()).contains("2 parts", "left bolt: ~ worn", "right bolt: + sound");
            walk.type("e")
                    .press(Key.Named.DOWN)
                    .type("b")
                    .press(SAVE)
                    .type("his name")
                    .press(SAVE);
            assertThat(walk.screen()).contains("2026-11, Bob, water low", "corrected", "left bolt: ~ worn");
        }
    }

    @Test
    void photosAreKeptByNameAndHash(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("crack.jpg"), "abc");
        try (Walk walk = atPorte()) {
            walk.type("iw")
                    .press(Key.Named.DOWN, 6)
                    .type(folder.resolve("missing.jpg").toString())
                    .press(SAVE);
            assertThat(walk.screen().replace("\n", "")).contains("There is no photo");
            assertThat(porte(walk).parts().get(0).state().condition()).contains(Condition.SOUND);

            walk.press(Key.ctrl('u')).type(file + "=at the edge; " + file).press(SAVE);
            assertThat(porte(walk).parts().get(0).inspections().get(0).content().photos())
                    .extracting(photo -> photo.file() + "|" + photo.caption())
                    .containsExactly("crack.jpg|at the edge", "crack.jpg|");

            walk.press(Key.Named.DOWN, 2)
                    .press(Key.Named.ENTER)
                    .press(Key.Named.DOWN)
                    .press(Key.Named.ENTER);
            // SHA-256 of "abc": FIPS 180-4, appendix B.1 of FIPS 180-2.
            assertThat(walk.screen()).contains("photo crack.jpg \"at the edge\", sha256 ba7816bf8f01...");

            walk.press(Key.Named.ESCAPE).type("e");
            for (int field = 0; field < 20 && !walk.screen().contains("> Keep photo crack.jpg"); field++) {
                walk.press(Key.Named.TAB);
            }
            assertThat(walk.screen()).contains("> Keep photo crack.jpg", "< yes >");
            walk.press(Key.Named.LEFT).press(SAVE).type("wrong picture").press(SAVE);
            assertThat(porte(walk).parts().get(0).counting().get(0).photos())
                    .extracting(photo -> photo.caption())
                    .containsExactly("");
        }
    }

    @Test
    void aMonthIsADateAndItsAgeIsABound() {
        try (Walk walk = atPorte()) {
            walk.press(Key.Named.DOWN, 2)
                    .type("e")
                    .press(Key.Named.DOWN, 7)
                    .press(Key.ctrl('u'))
                    .type("2019-06");
            walk.press(SAVE)
                    .type("i")
                    .press(Key.Named.UP, 3)
                    .press(Key.ctrl('u'))
                    .type("2026-06");
            walk.press(Key.Named.DOWN, 4).type("w").press(Key.ctrl('s'));
            assertThat(porte(walk).parts().get(1).inspections())
                    .extracting(entry -> entry.content().on().print())
                    .contains("2026-06");
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Placed: 2019-06, at least 7 years 4 months ago");
            walk.press(Key.Named.ESCAPE)
                    .press(Key.Named.DOWN)
                    .press(Key.Named.ENTER)
                    .press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("2026-06  ~ worn");
        }
    }

    @Test
    void onTheSmallestScreenEverythingCanStillBeDone() {
        try (Walk walk = atRing(12, 40)) {
            walk.press(Key.Named.DOWN).type("x").type("mistake").press(SAVE);
            assertThat(walk.screen()).contains("withdrawn");
            walk.type("h").press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("withdrew inspection of part ring");
            walk.press(Key.Named.ESCAPE).type("t");
            assertThat(ring(walk).inspections()).allMatch(Entry::counts);
            assertThat(new CheckDatabase(walk.session()).findings()).isEmpty();
        }
    }

    @Test
    void aReadOnlyDatabaseRefusesEach() {
        try (Walk walk = Walk.readOnly(24, 80)) {
            for (String key : List.of("x", "z", "Z", "n")) {
                assertThat(walk.type(key).screen()).as(key).contains("The database is open for reading only.");
            }
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2);
            for (String key : List.of("x", "z", "Z", "m", "K", "J")) {
                assertThat(walk.type(key).screen()).as(key).contains("The database is open for reading only.");
            }
            walk.press(Key.Named.ENTER)
                    .press(Key.Named.DOWN, 5)
                    .press(Key.Named.ENTER)
                    .press(Key.Named.DOWN);
            for (String key : List.of("x", "e", "z")) {
                assertThat(walk.type(key).screen()).as(key).contains("The database is open for reading only.");
            }
            walk.type("h").type("t");
            assertThat(walk.screen()).contains("The database is open for reading only.");
        }
    }
}
