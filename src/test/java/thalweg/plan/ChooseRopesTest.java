package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thalweg.units.Length;

/** Which ropes to carry, against sets that are tried one by one in another way. */
class ChooseRopesTest {

    private static final RopeMargin NONE = new RopeMargin(0, new Length(0));

    private static RopeAtHand rope(double metres, double gramsPerMetre) {
        return new RopeAtHand(new Length(metres), "", OptionalDouble.of(gramsPerMetre));
    }

    private static List<RopeNeed> drops(double... metres) {
        List<RopeNeed> needs = new ArrayList<>();
        for (double one : metres) {
            needs.add(new RopeNeed(
                    needs.size() + 1, "", one == 0 ? Optional.empty() : Optional.of(new Length(one)), one != 0));
        }
        return needs;
    }

    @Test
    void oneLongRopeServesButHasNoSpare() {
        RopeChoice choice = ChooseRopes.of(drops(18, 25), List.of(rope(60, 65)), NONE);

        assertThat(choice.carried()).containsExactly(0);
        assertThat(choice.serves()).isTrue();
        assertThat(choice.spare()).isFalse();
        assertThat(choice.drops().get(1).technique()).contains(Technique.DOUBLED);
        assertThat(choice.drops().get(1).afterLoss()).contains(Technique.NONE);
        assertThat(choice.kilograms().orElseThrow()).isCloseTo(3.9, within(1e-9));
    }

    @Test
    void theLightestSetThatCanLoseARopeIsCarried() {
        List<RopeAtHand> ropes = List.of(rope(60, 65), rope(30, 65), rope(30, 40), rope(30, 65), rope(70, 65));
        RopeChoice choice = ChooseRopes.of(drops(28, 12), ropes, NONE);

        assertThat(choice.spare()).isTrue();
        assertThat(choice.carried()).containsExactly(1, 2, 3);
        assertThat(choice.drops().get(0).technique()).contains(Technique.TWO_ROPES);
        assertThat(choice.deciding()).containsExactly(0);
    }

    @Test
    void wetRopesAreShorterAndTheAnchorTakesSome() {
        RopeMargin margin = new RopeMargin(0.05, new Length(2));

        assertThat(ChooseRopes.of(drops(27.5), List.of(rope(60, 65)), margin).serves())
                .isTrue();
        assertThat(ChooseRopes.of(drops(27.6), List.of(rope(60, 65)), margin).serves())
                .isFalse();
        assertThat(ChooseRopes.of(drops(55), List.of(rope(60, 65), rope(60, 65)), margin)
                        .serves())
                .isTrue();
        assertThat(ChooseRopes.of(drops(55.1), List.of(rope(60, 65), rope(60, 65)), margin)
                        .serves())
                .isFalse();
    }

    @Test
    void aDropThatNothingReachesIsSaidToBeJustThat() {
        RopeChoice choice = ChooseRopes.of(drops(50, 90), List.of(rope(40, 65), rope(30, 65)), NONE);

        assertThat(choice.serves()).isFalse();
        assertThat(choice.carried()).containsExactly(0, 1);
        assertThat(choice.drops())
                .extracting(drop -> drop.technique().orElseThrow())
                .containsExactly(Technique.KNOT_TO_PASS, Technique.NONE);
        assertThat(choice.deciding()).isEmpty();
    }

    @Test
    void oneRopeThatReachesSingleLowersAllButTheLast() {
        RopeChoice choice = ChooseRopes.of(drops(38, 18, 41), List.of(rope(40, 65), rope(30, 65)), NONE);

        assertThat(choice.serves()).isFalse();
        assertThat(choice.drops())
                .extracting(drop -> drop.technique().orElseThrow())
                .containsExactly(Technique.LOWERED, Technique.DOUBLED, Technique.KNOT_TO_PASS);
        assertThat(choice.drops())
                .extracting(drop -> drop.lowered().orElseThrow())
                .containsExactly(true, true, false);
    }

    @Test
    void aDropOfUnknownLengthIsToldAndNeverGuessed() {
        RopeChoice choice = ChooseRopes.of(drops(0, 10), List.of(rope(25, 65)), NONE);

        assertThat(choice.drops().get(0).technique()).isEmpty();
        assertThat(choice.drops().get(1).technique()).contains(Technique.DOUBLED);
        assertThat(ChooseRopes.of(drops(0), List.of(rope(25, 65)), NONE).carried())
                .isEmpty();
    }

    @Test
    void withoutTheWeightOfOneRopeTheLengthsAreCompared() {
        RopeAtHand unknown = new RopeAtHand(new Length(50), "", OptionalDouble.empty());
        RopeChoice choice = ChooseRopes.of(drops(20), List.of(rope(60, 10), unknown), NONE);

        assertThat(choice.kilograms()).isEmpty();
        assertThat(choice.spare()).isTrue();
        assertThat(ChooseRopes.of(drops(24), List.of(rope(60, 10), unknown, rope(60, 10)), NONE)
                        .carried())
                .containsExactly(0, 1);
    }

    @Test
    void tooManyRopesAreRefused() {
        List<RopeAtHand> many = Collections.nCopies(ChooseRopes.MOST_ROPES + 1, rope(30, 60));

        assertThatIllegalArgumentException().isThrownBy(() -> ChooseRopes.of(drops(10), many, NONE));
    }

    /** Every set, and for each every drop and every lost rope, written apart. */
    @Test
    void noLighterSetServes() {
        Random random = new Random(11);
        for (int trial = 0; trial < 400; trial++) {
            List<RopeAtHand> ropes = IntStream.range(0, 1 + random.nextInt(6))
                    .mapToObj(i -> rope(10 + random.nextInt(8) * 10, 40 + random.nextInt(4) * 10))
                    .toList();
            double[] lengths = random.doubles(1 + random.nextInt(4), 2, 45).toArray();
            RopeMargin margin = new RopeMargin(random.nextDouble() * 0.1, new Length(random.nextInt(4)));
            RopeChoice choice = ChooseRopes.of(drops(lengths), ropes, margin);
            double withSpare = Double.POSITIVE_INFINITY;
            double without = Double.POSITIVE_INFINITY;
            for (List<RopeAtHand> set : sets(ropes)) {
                double kilograms = set.stream()
                        .mapToDouble(one -> one.kilograms().orElseThrow())
                        .sum();
                boolean all = served(lengths, set, margin);
                boolean still = all
                        && set.stream().allMatch(lost -> {
                            List<RopeAtHand> left = new ArrayList<>(set);
                            left.remove(lost);
                            return served(lengths, left, margin);
                        });
                without = all ? Math.min(without, kilograms) : without;
                withSpare = still ? Math.min(withSpare, kilograms) : withSpare;
            }
            assertThat(choice.serves()).isEqualTo(without < Double.POSITIVE_INFINITY);
            assertThat(choice.spare()).isEqualTo(withSpare < Double.POSITIVE_INFINITY);
            if (choice.serves()) {
                assertThat(choice.kilograms().orElseThrow())
                        .isCloseTo(choice.spare() ? withSpare : without, within(1e-9));
            }
        }
    }

    private static List<List<RopeAtHand>> sets(List<RopeAtHand> ropes) {
        List<List<RopeAtHand>> sets = new ArrayList<>(List.of(List.of()));
        for (RopeAtHand rope : ropes) {
            for (List<RopeAtHand> set : List.copyOf(sets)) {
                List<RopeAtHand> more = new ArrayList<>(set);
                more.add(rope);
                sets.add(more);
            }
        }
        return sets;
    }

    private static boolean served(double[] lengths, List<RopeAtHand> set, RopeMargin margin) {
        for (double length : lengths) {
            long reach = set.stream()
                    .filter(rope -> rope.length().metres() * (1 - margin.shrinkage())
                            >= length + margin.reserve().metres())
                    .count();
            boolean doubled = set.stream()
                    .anyMatch(rope -> rope.length().metres() * (1 - margin.shrinkage())
                            >= 2 * length + margin.reserve().metres());
            if (reach < 2 && !doubled) {
                return false;
            }
        }
        return true;
    }
}
