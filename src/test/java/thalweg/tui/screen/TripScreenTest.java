package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Round;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.logbook.TripTime;
import thalweg.service.FindRecord;
import thalweg.service.ListTrips;
import thalweg.text.Language;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** The trip's own screen, on 25 November 2026 at noon. */
final class TripScreenTest {

    private static final Key SAVE = Key.ctrl('s');

    @TempDir
    private Path folder = Path.of("");

    private static final Map<String, Consumer<Walk>> PLACES = new TreeMap<>(Map.of(
            "planned", walk -> at(walk, "2026-12-05"),
            "under-way", TripScreenTest::underWay,
            "closed",
                    walk -> {
                        underWay(walk);
                        walk.type("c").press(Key.Named.ESCAPE);
                    },
            "times",
                    walk -> {
                        underWay(walk);
                        walk.press(Key.Named.ENTER);
                    },
            "into-the-round",
                    walk -> {
                        underWay(walk);
                        walk.type("c");
                    }));

    /** A trip of that day, opened. */
    private static Walk at(Walk walk, String day) {
        walk.type("/éclus")
                .press(Key.Named.ENTER)
                .type("tn")
                .press(Key.Named.TAB)
                .type(day)
                .press(Key.Named.TAB)
                .type("club course")
                .press(Key.Named.TAB);
        walk.tell(new Message.Pasted("Ana, lead, 62 kg\n滝 子, beginner"));
        walk.press(Key.Named.TAB, 2).type("7:30").press(Key.Named.TAB, 2).type("l");
        return walk.press(SAVE).press(Key.Named.ENTER);
    }

    private static void underWay(Walk walk) {
        at(walk, "2026-11-25").press(Key.Named.DOWN).type("a").press(Key.Named.ENTER);
        walk.press(Key.Named.TAB).type("12:20").press(SAVE);
    }

    private static Trip trip(Walk walk) {
        return new ListTrips(walk.session())
                .of(Optional.empty()).stream()
                        .map(TripInCanyon::trip)
                        .findFirst()
                        .orElseThrow();
    }

    private static CanyonRecord canyon(Walk walk) {
        return new FindRecord(walk.session()).canyon("éclusaune");
    }

    @Test
    void aTripLooksAsItDidAtFourSizes() {
        Sizes.lookAsTheyDid("screen/trip-", PLACES);
    }

    @Test
    void aTripDrawsAtEverySize() {
        Sizes.drawEverywhere(PLACES, Set.of());
    }

    @ParameterizedTest
    @EnumSource(value = Language.class)
    void aTripOffersHelpAtTheSmallestSizeInEveryLanguage(Language language) {
        Sizes.offerHelpAtTheSmallest(Map.of("planned", walk -> at(walk, "2026-12-05")), language);
    }

    @Test
    void timesAreNotedByOneKeyOrTypedAndKeptWithTheTrip() {
        try (Walk walk = Walk.sample(24, 80)) {
            underWay(walk);

            List<TripTime> times = trip(walk).times();
            assertThat(times).hasSize(1);
            assertThat(times.get(0).label()).isEqualTo("2 Porte");
            assertThat(times.get(0).reached()).contains(720);
            assertThat(times.get(0).left()).contains(740);

            walk.type("l");
            assertThat(trip(walk).times().get(0).reached()).contains(720);
            assertThat(trip(walk).times().get(0).left()).contains(720);
        }
    }

    @Test
    void timesStandInTheOrderOfTheLineHoweverTheyWereNoted() {
        try (Walk walk = Walk.sample(24, 80)) {
            at(walk, "2026-11-25")
                    .press(Key.Named.DOWN, 4)
                    .type("a")
                    .press(Key.Named.UP, 3)
                    .type("a");

            assertThat(trip(walk).times()).extracting(TripTime::label).containsExactly("2 Porte", "5 Rideau");
        }
    }

    @Test
    void emptyingBothTimesTakesThePlaceOut() {
        try (Walk walk = Walk.sample(24, 80)) {
            underWay(walk);
            walk.press(Key.Named.ENTER)
                    .press(Key.ctrl('u'))
                    .press(Key.Named.TAB)
                    .press(Key.ctrl('u'));
            walk.press(SAVE);

            assertThat(trip(walk).times()).isEmpty();
        }
    }

    @Test
    void aTimeThatCannotBeIsRefused() {
        try (Walk walk = Walk.sample(24, 80)) {
            underWay(walk);
            walk.press(Key.Named.ENTER)
                    .press(Key.Named.TAB)
                    .press(Key.ctrl('u'))
                    .type("11:50")
                    .press(SAVE);
            assertThat(words(walk)).contains("Left at 11:50, reached at 12:00: a place is left after it is reached");

            walk.press(Key.ctrl('u')).type("25:00").press(SAVE);
            assertThat(walk.screen()).contains("The time \"25:00\" does not exist");
            walk.press(Key.ctrl('u')).type("now").press(SAVE);
            assertThat(trip(walk).times().get(0).left()).contains(720);
        }
    }

    @Test
    void noTimeIsNotedBeforeTheDayOrNowWhenItIsLongOver() {
        try (Walk walk = Walk.sample(24, 80)) {
            at(walk, "2026-12-05").type("a");
            assertThat(words(walk)).contains("The trip is on 2026-12-05, and today is 2026-11-25");
        }
        try (Walk walk = Walk.sample(24, 80)) {
            at(walk, "2026-11-20").type("a");
            assertThat(words(walk)).contains("The trip was on 2026-11-20, and today is 2026-11-25; type the times");
        }
    }

    @Test
    void closingLeadsIntoTheRoundWithWhatTheTripKnows() {
        try (Walk walk = Walk.sample(40, 120)) {
            underWay(walk);
            walk.type("c");

            assertThat(trip(walk).state()).isEqualTo(Trip.State.DONE);
            assertThat(walk.screen()).contains("2026-11-25", "Ana, 滝 子", "low", "leave out who should not be named");

            walk.press(Key.Named.TAB, 4).type("s").press(SAVE);
            Round round = canyon(walk).countingRounds().get(0).content();
            assertThat(round.on().print()).isEqualTo("2026-11-25");
            assertThat(round.by()).isEqualTo("Ana, 滝 子");
            assertThat(round.water()).isEqualTo(trip(walk).water());
            assertThat(walk.screen())
                    .contains("club course", "2026-11-25, done")
                    .doesNotContain("Done; c");
        }
    }

    @Test
    void aRoundThatWasLeftIsOfferedAgainAndTakenUpWhereItWas() {
        try (Walk walk = Walk.keeping(folder)) {
            underWay(walk);
            walk.type("c")
                    .press(Key.Named.TAB, 4)
                    .type("s")
                    .press(Key.Named.ESCAPE)
                    .type("k");
            assertThat(walk.screen()).contains("Done; c enters what was found.");
            assertThat(canyon(walk).countingRounds()).isEmpty();
        }
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("/éclus")
                    .press(Key.Named.ENTER)
                    .type("t")
                    .press(Key.Named.ENTER)
                    .type("c");
            assertThat(walk.screen()).contains("Filled from a draft", "Ana, 滝 子");
            walk.press(SAVE);
            assertThat(canyon(walk).countingRounds()).hasSize(1);
            assertThat(walk.screen()).contains("2026-11-25, done");
            assertThat(words(walk.type("v").press(Key.Named.END))).contains("left bolt: + sound");
        }
    }

    @Test
    void aTripThatLiesAheadIsNotClosed() {
        try (Walk walk = Walk.sample(24, 80)) {
            at(walk, "2026-12-05").type("c");

            assertThat(words(walk)).contains("has not come yet, so the trip is not done");
            assertThat(trip(walk).state()).isEqualTo(Trip.State.PLANNED);
        }
    }

    @Test
    void aTripThatIsTakenOutSaysSo() {
        try (Walk walk = Walk.sample(24, 80)) {
            at(walk, "2026-12-05").type("x").type("entered twice").press(SAVE);

            assertThat(walk.screen()).contains("This trip is no longer here.");
        }
    }

    private static String words(Walk walk) {
        return walk.screen().replaceAll("[│█\\s]+", " ");
    }
}
