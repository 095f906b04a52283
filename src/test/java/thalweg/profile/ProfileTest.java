package thalweg.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProfileTest {

    private static Profile profile(String... places) {
        return Profile.of(Lines.of(places));
    }

    private static List<Double> along(Profile profile) {
        return profile.stops().stream().map(Stop::along).toList();
    }

    private static List<Double> lips(Profile profile) {
        return profile.stops().stream().map(Stop::lip).toList();
    }

    @Test
    void placesStandAtTheirDistanceAndBelowAllHeightsBefore() {
        Profile profile = profile("walk|0 m", "drop|60 m|8 m", "slide|180 m|4.5 m", "swim|200 m", "drop|410 m|22 m");

        assertThat(profile.spacing()).isEqualTo(Spacing.TO_SCALE);
        assertThat(along(profile)).containsExactly(0.0, 60.0, 180.0, 200.0, 410.0);
        assertThat(lips(profile)).containsExactly(0.0, 0.0, 8.0, 12.5, 12.5);
        assertThat(profile.depth()).isEqualTo(34.5);
    }

    @Test
    void anUnknownHeightIsNoHeight() {
        Profile profile = profile("drop|0 m|8 m", "drop|60 m|-", "handline|80 m|-", "drop|90 m|2 m");

        assertThat(lips(profile)).containsExactly(0.0, 8.0, 8.0, 8.0);
        assertThat(profile.withoutHeight()).extracting(place -> place.number()).containsExactly(2, 3);
        assertThat(profile.falls()).hasSize(4);
    }

    @Test
    void aHeightOfNothingIsKnown() {
        Profile profile = profile("drop|0 m|0 m", "drop|60 m|3 m");

        assertThat(profile.withoutHeight()).isEmpty();
        assertThat(profile.falls()).hasSize(2);
    }

    @Test
    void noHeightIsMissedOnAWalkOrAtAHazard() {
        Profile profile = profile("walk|0 m", "swim|5 m", "hazard|9 m", "escape|12 m", "other|14 m", "drop|20 m|5 m");

        assertThat(profile.withoutHeight()).isEmpty();
        assertThat(profile.falls()).hasSize(1);
    }

    @Test
    void theHeightOfAWayOutIsNotDescended() {
        assertThat(profile("walk|0 m", "escape|50 m|40 m", "drop|90 m|5 m").depth())
                .isEqualTo(5);
    }

    @Test
    void aWalkThatFallsDoesSoOnTheWayToTheNextPlace() {
        Profile profile = profile("walk|0 m|30 m", "drop|300 m|5 m");

        assertThat(profile.path())
                .containsExactly(new Stretch(0, 0, 300, 30, true, false), new Stretch(300, 30, 300, 35, true, true));
    }

    @Test
    void whereAWalkFallsAfterTheLastPlaceIsUnknown() {
        assertThat(profile("drop|0 m|5 m", "walk|100 m|30 m").path())
                .containsExactly(
                        new Stretch(0, 0, 0, 5, true, true),
                        new Stretch(0, 5, 100, 5, true, false),
                        new Stretch(100, 5, 100, 35, false, true));
    }

    @Test
    void placesWithoutDistanceStandEvenlyBetweenTheirNeighbours() {
        Profile profile = profile("walk|-", "drop|100 m|5 m", "drop|-|5 m", "drop|-|5 m", "drop|400 m|5 m", "walk|-");

        assertThat(along(profile)).containsExactly(0.0, 100.0, 200.0, 300.0, 400.0, 415.0);
        assertThat(profile.stops()).extracting(Stop::placed).containsExactly(false, true, false, false, true, false);
        assertThat(profile.path().stream().filter(stretch -> !stretch.fall()).map(Stretch::known))
                .containsExactly(false, false, false, false, false);
    }

    @Test
    void aPlaceThatIsAddedMovesNoKnownOne() {
        Profile before = profile("walk|0 m", "drop|100 m|5 m", "drop|400 m|7 m");
        Profile after = profile("walk|0 m", "swim|-", "drop|100 m|5 m", "hazard|-", "drop|400 m|7 m", "walk|-");

        for (int number : new int[] {0, 1, 2}) {
            Stop one = before.stops().get(number);
            Stop same = after.stops().get(2 * number);
            assertThat(same.along()).isEqualTo(one.along());
            assertThat(same.lip()).isEqualTo(one.lip());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'drop|5 m|9 m', ONE_PLACE, true",
        "'drop|5 m|-', ONE_PLACE, false",
        "'walk|-;drop|-|9 m', UNKNOWN, true",
        "'walk|7 m;drop|-|9 m', UNKNOWN, true",
        "'walk|7 m;drop|-|-', UNKNOWN, false",
        "'walk|0 m;drop|9 m|2 m;drop|8 m|2 m', BACKWARDS, true",
        "'walk|0 m;walk|9 m;walk|8 m', BACKWARDS, false",
        "'drop|9 m|2 m;drop|9 m|2 m', SAME, true",
        "'walk|9 m;walk|9 m', SAME, false",
        "'walk|0 m;drop|9 m|-', TO_SCALE, true",
    })
    void whatIsNotKnownWellEnoughIsNotDrawnToScale(String places, Spacing spacing, boolean drawn) {
        Profile profile = profile(places.split(";", -1));

        assertThat(profile.spacing()).isEqualTo(spacing);
        assertThat(profile.canBeDrawn()).isEqualTo(drawn);
    }

    @Test
    void anEmptyLineHasNoProfile() {
        assertThat(profile().canBeDrawn()).isFalse();
        assertThat(profile().whole()).isEqualTo(new Window(0, 0));
    }

    @Test
    void theFirstPairThatGoesBackwardsIsNamed() {
        assertThat(profile("walk|0 m", "drop|90 m|2 m", "swim|-", "drop|80 m|2 m", "drop|20 m|2 m")
                        .backwards())
                .hasValueSatisfying(pair ->
                        assertThat(pair).extracting(place -> place.number()).containsExactly(2, 4));
    }

    @Test
    void theWindowAroundAPlaceHoldsItAndStaysOnTheLine() {
        for (long seed = 0; seed < 80; seed++) {
            Profile profile = Profile.of(Lines.random(seed, 1 + (int) (seed % 40)));
            Window whole = profile.whole();
            for (int times : new int[] {1, 2, 3, 4, 8, 16}) {
                for (int index = 0; index < profile.size(); index++) {
                    Window window = profile.around(index, times);

                    assertThat(window.holds(profile.stops().get(index).along()))
                            .as("seed %d, place %d of %s in %s", seed, index, whole, window)
                            .isTrue();
                    assertThat(window.from()).isGreaterThanOrEqualTo(whole.from());
                    assertThat(window.to()).isLessThanOrEqualTo(whole.to() + 1e-9);
                    assertThat(window.to() - window.from())
                            .isCloseTo((whole.to() - whole.from()) / times, within(1e-6));
                }
            }
        }
    }

    @Test
    void thePathHasNoGapAndNeverRises() {
        for (long seed = 0; seed < 80; seed++) {
            List<Stretch> path = Profile.of(Lines.random(seed, 20)).path();
            for (int i = 1; i < path.size(); i++) {
                assertThat(path.get(i).fromAlong()).isEqualTo(path.get(i - 1).toAlong());
                assertThat(path.get(i).fromDown()).isEqualTo(path.get(i - 1).toDown());
                assertThat(path.get(i).toDown())
                        .isGreaterThanOrEqualTo(path.get(i).fromDown());
            }
        }
    }

    @Test
    void aWindowCutsTheLineWhereItCrossesItsEdge() {
        Stretch slope = new Stretch(0, 10, 100, 30, true, false);

        assertThat(slope.within(new Window(25, 50))).contains(new Stretch(25, 15, 50, 20, true, false));
        assertThat(slope.within(new Window(101, 120))).isEmpty();
        assertThat(new Stretch(40, 10, 40, 30, true, true).within(new Window(40, 60)))
                .contains(new Stretch(40, 10, 40, 30, true, true));
    }
}
