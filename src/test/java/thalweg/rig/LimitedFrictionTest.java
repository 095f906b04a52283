package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Between which shares friction may hold a master that slides between limiter knots. */
class LimitedFrictionTest {

    private static FrictionRange range(RigDraft draft) {
        return Rigs.answer(draft).friction().orElseThrow();
    }

    private static RigDraft pair(double included, double limit, double toward, double friction) {
        return Rigs.pair(included)
                .withLoad(LoadDraft.ofForce(0.9, toward, 0))
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, 70)
                        .withLimits(LimitDraft.at(limit, limit).withStrands(2), friction));
    }

    /** As long as no knot is near, it is the range of the loop that slides, which is computed in another way. */
    @ParameterizedTest
    @CsvSource({"60, 0, 0.05", "60, 4, 0.1", "90, -3, 0.08", "20, 0, 0.02", "120, 2, 0.1"})
    void farFromTheKnotsItIsTheRangeOfASlidingRig(double included, double toward, double friction) {
        RigDraft limited = pair(included, 0.7, toward, friction);
        RigDraft sliding =
                limited.withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70).withSliding(true, friction));

        ShareRange one = range(limited).shares().get(0);
        ShareRange other = range(sliding).shares().get(0);

        assertThat(one.least()).isCloseTo(other.least(), within(1e-7));
        assertThat(one.most()).isCloseTo(other.most(), within(1e-7));
        assertThat(one.most() - one.least()).isGreaterThan(0.005);
    }

    @Test
    void withoutFrictionTheRangeIsTheShareAtRest() {
        RandomRigs.some(RigKind.LIMITED, 81, 150).map(input -> with(input, 0)).forEach(input -> {
            double share = Rigs.steady(input).points().get(0).share();
            ShareRange first = FindSideFriction.of(input).shares().get(0);

            assertThat(first.least()).as(input.toString()).isCloseTo(share, within(1e-6));
            assertThat(first.most()).as(input.toString()).isCloseTo(share, within(1e-6));
        });
    }

    private static RigInput with(RigInput input, double friction) {
        RigDraft draft = RigDraft.of(input);
        return Rigs.input(draft.withRig(draft.rig().withLimits(draft.rig().limits(), friction)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.5})
    void theRangeHoldsTheShareAtRestAndGrowsWithFriction(double friction) {
        RandomRigs.some(RigKind.LIMITED, 82, 150).forEach(input -> {
            double share = Rigs.steady(input).points().get(0).share();
            ShareRange narrow =
                    FindSideFriction.of(with(input, friction)).shares().get(0);
            ShareRange wide =
                    FindSideFriction.of(with(input, 2 * friction)).shares().get(0);

            assertThat(narrow.least()).isLessThanOrEqualTo(share + 1e-7);
            assertThat(narrow.most()).isGreaterThanOrEqualTo(share - 1e-7);
            assertThat(wide.least()).isLessThanOrEqualTo(narrow.least() + 1e-7);
            assertThat(wide.most()).isGreaterThanOrEqualTo(narrow.most() - 1e-7);
        });
    }

    /** Written apart: every length of slider on A's side at which the master stays where it is put, and the shares there. */
    @Test
    void theEndsAreThoseOfAllPlacesAtWhichTheMasterStays() {
        int compared = 0;
        for (RigInput input : RandomRigs.some(RigKind.LIMITED, 83, 25).toList()) {
            double friction = input.rig().limiters().orElseThrow().friction();
            double slider = input.rig().limiters().orElseThrow().slider().metres();
            ShareRange found = FindSideFriction.of(input).shares().get(0);
            int last = 120;
            double[] shares = new double[last + 1];
            int first = last;
            int end = 0;
            for (int i = 0; i <= last; i++) {
                FrictionByHand.Held held = FrictionByHand.between(input, slider * i / last);
                shares[i] = held.share();
                // At the first place the knot of A is at the master and keeps the slider from slipping over to B.
                boolean staysFromB = i == 0 || held.logOfRatio() >= -friction * held.turn();
                boolean staysFromA = i == last || held.logOfRatio() <= friction * held.turn();
                if (staysFromA && staysFromB) {
                    first = Math.min(first, i);
                    end = Math.max(end, i);
                }
            }
            if (first <= end) {
                compared++;
                assertThat(found.most())
                        .as(input.toString())
                        .isBetween(shares[first] - 1e-6, shares[Math.max(0, first - 1)] + 1e-6);
                assertThat(found.least())
                        .as(input.toString())
                        .isBetween(shares[Math.min(last, end + 1)] - 1e-6, shares[end] + 1e-6);
            }
        }
        assertThat(compared).isGreaterThan(15);
    }

    /** Where the knot holds the master, friction has no say. */
    @Test
    void farAgainstAKnotThereIsOneShare() {
        ShareRange first = range(pair(60, 0.02, 25, 0.05)).shares().get(0);

        assertThat(first.most()).isEqualTo(first.least());
    }

    @Test
    void theSecondShareIsWhatTheFirstLeaves() {
        List<ShareRange> shares = range(pair(70, 0.1, 5, 0.3)).shares();

        assertThat(shares.get(0).least() + shares.get(1).most()).isCloseTo(1, within(1e-12));
        assertThat(shares.get(0).most() + shares.get(1).least()).isCloseTo(1, within(1e-12));
    }

    @Test
    void aPointAboveAnotherHoldsHalfATurn() {
        RigDraft stack = Rigs.focused(
                        List.of(PointDraft.of("low", 0, 1, 0), PointDraft.of("high", 0, 2, 0)),
                        Vector3.ZERO,
                        1e-4,
                        0,
                        0)
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, 100_000)
                        .withLimits(LimitDraft.at(0.3, 0.3).withStrands(2), 0.175));
        ShareRange low = range(stack).shares().get(0);

        // Half a turn, mu = 0.175: 1.73, printed in Delaney, Physics for Roping Technicians (2022), p. 88.
        assertThat(low.most() / (1 - low.most())).isCloseTo(1.73, within(0.005));
    }
}
