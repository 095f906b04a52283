package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thalweg.logbook.Trip;

/** Descents against cases worked by hand, and against what no descent can break. */
class DescentRunTest {

    private static final Paces EASY = new Paces(8, 3, 10, 4, 1.5, 20, 0);

    private static LineStep drop(int place, double metres, double walk) {
        return new LineStep(place, "", true, metres, walk, true, false);
    }

    private static LineStep jump(int place, double walk) {
        return new LineStep(place, "", false, 0, walk, true, false);
    }

    private static double end(List<LineStep> line, int people, int sets) {
        double[] done = new DescentRun(line, Party.of(people), sets, EASY, Rests.NONE).run();
        return done[done.length - 1];
    }

    /** Walk 100 m at 20 m/min: 5; rig 8; down 20 m: 3 + 2; pull 4. */
    @Test
    void onePersonAndOneDrop() {
        assertThat(end(List.of(drop(1, 20, 100)), 1, 1)).isCloseTo(5 + 8 + 5 + 4, within(1e-9));
    }

    /** Three go down one after the other, 5 min each; the last pulls. */
    @Test
    void threePeopleAndOneDrop() {
        assertThat(end(List.of(drop(1, 20, 0)), 3, 1)).isCloseTo(8 + 3 * 5 + 4, within(1e-9));
    }

    /** With one set the second drop is rigged when the first is pulled: 8 + 3 x 5 + 4 = 27, then the same again. */
    @Test
    void oneSetWaitsForTheLast() {
        assertThat(end(List.of(drop(1, 20, 0), drop(2, 20, 0)), 3, 1)).isCloseTo(54, within(1e-9));
    }

    /**
     * The second set goes with the first person, who is down at 13 and rigs until 21. She is down the second at 26, the second,
     * down the first at 18, at 31, the third, down the first at 23, pulls until 27 and comes at 31: down at 36, pulls until 40.
     */
    @Test
    void twoSetsLeapfrog() {
        assertThat(end(List.of(drop(1, 20, 0), drop(2, 20, 0)), 3, 2)).isCloseTo(40, within(1e-9));
    }

    /** Four pass one at a time, 1.5 min each. */
    @Test
    void aJumpIsPassedOneAtATime() {
        assertThat(end(List.of(jump(1, 40)), 4, 1)).isCloseTo(2 + 4 * 1.5, within(1e-9));
    }

    private static Party mixed(int people, Random random) {
        return new Party(random.doubles(people, 1, 3).boxed().toList());
    }

    /** The lead down at 8 + 5 = 13, the beginner, twice as slow, 10 min later, the last at 28; pulled at 32. */
    @Test
    void aBeginnerTakesLongerForWhatTheyDoThemselves() {
        double[] done =
                new DescentRun(List.of(drop(1, 20, 0)), new Party(List.of(1.0, 2.0, 1.0)), 1, EASY, Rests.NONE).run();

        assertThat(done[0]).isCloseTo(8 + 5 + 10 + 5 + 4, within(1e-9));
    }

    /** Walking 100 m at 20 m/min takes the one behind 10 min, and the jump 3: they hold nobody up, but are waited for. */
    @Test
    void nobodyOvertakesWhoeverIsSlow() {
        double[] slowLast =
                new DescentRun(List.of(jump(1, 100)), new Party(List.of(1.0, 2.0)), 1, EASY, Rests.NONE).run();
        double[] slowFirst =
                new DescentRun(List.of(jump(1, 100)), new Party(List.of(2.0, 1.0)), 1, EASY, Rests.NONE).run();

        assertThat(slowLast[0]).isCloseTo(10 + 3, within(1e-9));
        assertThat(slowFirst[0]).isCloseTo(10 + 3 + 1.5, within(1e-9));
    }

    /** Each drop takes 27 min: after the second 54 have passed, all rest 10, then go on; none after the last. */
    @Test
    void theGroupRestsAtTheNextPlace() {
        List<LineStep> line = List.of(drop(1, 20, 0), drop(2, 20, 0), drop(3, 20, 0), drop(4, 20, 0));
        double[] done = new DescentRun(line, Party.of(3), 1, EASY, new Rests(50, 10)).run();

        assertThat(done).containsExactly(27, 54, 54 + 10 + 27, 54 + 10 + 54);
    }

    @Test
    void beginnersGoBetweenTheOthers() {
        List<Trip.Person> people = List.of(
                person("a", Trip.Role.BEGINNER),
                person("b", Trip.Role.LEAD),
                person("c", Trip.Role.BEGINNER),
                person("d", Trip.Role.ABLE));

        assertThat(Party.of(people, 1.5).slowness()).containsExactly(1.0, 1.5, 1.5, 1.0);
        assertThat(Party.of(people.subList(0, 1), 1.5).slowness()).containsExactly(1.5);
    }

    private static Trip.Person person(String name, Trip.Role role) {
        return new Trip.Person(name, Optional.of(role), Optional.empty());
    }

    @Test
    void whatIsLeftAndWhatHasPassedAreTheWholeWithoutSpread() {
        List<LineStep> line = randomLine(new Random(21));
        Timetable table = Timetable.of(line, Party.of(3), 1, EASY, Rests.NONE);

        assertThat(table.steps())
                .allSatisfy(step -> assertThat(step.late() + step.lateRest()).isCloseTo(table.end()[2], within(1e-9)));
    }

    private static List<LineStep> randomLine(Random random) {
        List<LineStep> line = new ArrayList<>();
        for (int place = 1; place <= 1 + random.nextInt(9); place++) {
            double walk = random.nextInt(200);
            line.add(random.nextBoolean() ? drop(place, random.nextInt(50), walk) : jump(place, walk));
        }
        return line;
    }

    @Test
    void nobodyIsBelowBeforeTheyWereAboveAndARopeIsInOnePlaceAtATime() {
        Random random = new Random(5);
        for (int trial = 0; trial < 500; trial++) {
            int people = 1 + random.nextInt(6);
            int sets = 1 + random.nextInt(3);
            DescentRun run = new DescentRun(
                    randomLine(random), mixed(people, random), sets, EASY, new Rests(random.nextInt(60), 10));
            run.run();
            double[] person = new double[people];
            double[] set = new double[sets];
            for (DescentRun.Event event : run.events()) {
                assertThat(event.to()).isGreaterThanOrEqualTo(event.from());
                if (event.person() >= 0) {
                    assertThat(event.from()).isGreaterThanOrEqualTo(person[event.person()] - 1e-9);
                    person[event.person()] = event.to();
                } else {
                    assertThat(event.from()).isGreaterThanOrEqualTo(set[event.set()] - 1e-9);
                    set[event.set()] = event.to();
                }
            }
            onePersonAtATime(run.events());
        }
    }

    private static void onePersonAtATime(List<DescentRun.Event> events) {
        for (DescentRun.Event one : events) {
            for (DescentRun.Event other : events) {
                boolean both = one.place() == other.place() && one.person() >= 0 && other.person() > one.person();
                if (both) {
                    assertThat(other.from()).isGreaterThanOrEqualTo(one.to() - 1e-9);
                }
            }
        }
    }

    /**
     * One set is always there when the last has come; more can only be there before. Of two and three that need not hold: a
     * group that is faster with three may just have gone when a set comes down.
     */
    @Test
    void moreSetsAreNeverSlowerThanOne() {
        Random random = new Random(6);
        for (int trial = 0; trial < 500; trial++) {
            List<LineStep> line = randomLine(random);
            for (int people = 1; people < 6; people++) {
                for (int sets = 2; sets < 5; sets++) {
                    assertThat(end(line, people, sets)).isLessThanOrEqualTo(end(line, people, 1) + 1e-9);
                }
            }
        }
    }

    /** With one set all wait for it, and everybody more takes time: one alone at a time is on the rope. */
    @Test
    void withOneSetMorePeopleAreNeverFaster() {
        Random random = new Random(7);
        for (int trial = 0; trial < 500; trial++) {
            List<LineStep> line = randomLine(random);
            for (int people = 1; people < 6; people++) {
                assertThat(end(line, people + 1, 1)).isGreaterThanOrEqualTo(end(line, people, 1) - 1e-9);
            }
        }
    }

    @Test
    void percentilesAreInOrderAndWithoutSpreadTheyAreOne() {
        List<LineStep> line = randomLine(new Random(9));
        double[] spread =
                Timetable.of(line, Party.of(4), 2, Paces.STANDARD, Rests.NONE).end();
        double[] exact = Timetable.of(line, Party.of(4), 2, EASY, Rests.NONE).end();

        assertThat(spread[0]).isLessThan(spread[1]);
        assertThat(spread[1]).isLessThan(spread[2]);
        assertThat(exact[0]).isCloseTo(exact[2], within(1e-9));
        assertThat(exact[1]).isCloseTo(end(line, 4, 2), within(1e-9));
        assertThat(Timetable.of(List.of(), Party.of(4), 2, EASY, Rests.NONE).end())
                .containsExactly(0, 0, 0);
    }
}
