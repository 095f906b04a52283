package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class ConditionRulesTest {

    private static final Uid PART = Uid.minted(1, new UUID(1, 1));

    /** "2019-06 unsafe>sound replaced" is found unsafe, replaced and left sound; "2019-06 -" is not seen. */
    private static Inspection entry(String text) {
        String[] words = text.strip().split(" ", -1);
        String[] conditions = words[1].split(">", -1);
        return new Inspection(
                PART,
                PartialDate.parse(words[0]),
                "",
                condition(conditions[0]),
                conditions.length > 1 ? condition(conditions[1]) : Optional.empty(),
                Optional.empty(),
                words.length > 2 ? List.of(Work.valueOf(words[2].toUpperCase(Locale.ROOT))) : List.of(),
                "");
    }

    private static Optional<Condition> condition(String word) {
        return Arrays.stream(Condition.values())
                .filter(condition -> condition.name().equalsIgnoreCase(word))
                .findFirst();
    }

    private static String print(PartState state) {
        return state.condition().map(Enum::name).orElse("unknown") + " "
                + state.seenOn().map(PartialDate::print).orElse("never")
                + (state.contradictory() ? " contradictory" : "")
                + state.notSeenSince().map(date -> " missed " + date.print()).orElse("");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2020-05-01 sound; 2021-05-01 worn                   | WORN 2021-05-01
            2020-05-01 unsafe>sound                             | SOUND 2020-05-01
            2020-05-01 gone; 2021-05-01 sound                   | SOUND 2021-05-01
            2020-05-01 worn; 2021-05-01 -                       | WORN 2020-05-01 missed 2021-05-01
            2021-05-01 worn; 2020-05-01 -                       | WORN 2021-05-01
            2021-05-01 worn; 2021-05-01 -                       | WORN 2021-05-01
            2020-05-01 -; 2021-05-01 -                          | unknown never missed 2021-05-01
            2021-05-01 sound; 2021-05-01 sound                  | SOUND 2021-05-01
            2021-05-01 sound; 2021-05-01 doubtful               | DOUBTFUL 2021-05-01 contradictory
            2021-05-01 sound; 2021-05-01 gone; 2021-05-01 worn  | GONE 2021-05-01 contradictory
            2021-05-01 sound; 2021-05-01 unsafe; 2022-01-01 sound | SOUND 2022-01-01
            2021-05-01 unsafe>sound; 2021-05-01 sound           | SOUND 2021-05-01
            """)
    void theStateIsWhatWasSeenLast(String entries, String state) {
        List<Inspection> inspections = Arrays.stream(entries.split(";", -1))
                .map(ConditionRulesTest::entry)
                .toList();

        assertThat(print(ConditionRules.stateOf(inspections))).isEqualTo(state);
        assertThat(ConditionRules.stateOf(inspections).entries()).isEqualTo(inspections.size());
    }

    /** Whether a month's entry came before or after a day in it nobody knows, so the worse of them counts. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2021-05 sound; 2021-05-10 unsafe      | UNSAFE 2021-05-10 contradictory
            2021-05 unsafe; 2021-05-10 sound      | UNSAFE 2021-05 contradictory
            2021 sound; 2021-05 worn; 2021-05-10 gone | GONE 2021-05-10 contradictory
            2021-05 sound; 2021-05-31 worn        | WORN 2021-05-31 contradictory
            2021-05 sound; 2021-05-10 sound       | SOUND 2021-05
            2021 unsafe; 2021-05 sound; 2022-02 sound | SOUND 2022-02
            2021 unsafe; 2020-12-31 sound         | UNSAFE 2021
            2021 worn; 2021-06-01 -               | WORN 2021
            2021-06 worn; 2021 -                  | WORN 2021-06 missed 2021
            """)
    void vagueDatesThatOverlapHaveNoOrder(String entries, String state) {
        theStateIsWhatWasSeenLast(entries, state);
    }

    /** A part gets worse by itself and never better; what looks better so soon was judged otherwise. Common sense, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2021-05-01 doubtful; 2021-05-31 sound                     | DOUBTFUL 2021-05-01 contradictory
            2021-05-01 doubtful; 2021-06-01 sound                     | SOUND 2021-06-01
            2021-05-01 sound; 2021-05-20 doubtful                     | DOUBTFUL 2021-05-20
            2021-05-01 sound; 2021-05-10 worn; 2021-05-20 sound       | WORN 2021-05-10 contradictory
            2021-05-01 unsafe; 2021-05-20 unsafe>sound                | SOUND 2021-05-20
            2021-05-01 unsafe; 2021-05-20 sound>worn                  | UNSAFE 2021-05-01 contradictory
            2021-05-01 unsafe; 2021-05-20 sound tightened             | SOUND 2021-05-20
            2021-05-01 unsafe; 2021-05-20 unsafe>sound replaced; 2021-05-21 sound | SOUND 2021-05-21
            2021-05-01 unsafe; 2021-05-20 sound; 2021-06-20 sound     | SOUND 2021-06-20
            2021-05-01 gone; 2021-05-02 -                             | GONE 2021-05-01 missed 2021-05-02
            2021-05 unsafe; 2021-06-15 sound                          | UNSAFE 2021-05 contradictory
            2021 unsafe; 2022 sound                                   | UNSAFE 2021 contradictory
            2021 unsafe; 2022-02 sound                                | SOUND 2022-02
            """)
    void aPartThatNobodyWorkedOnGetsNoBetterWithinAMonth(String entries, String state) {
        theStateIsWhatWasSeenLast(entries, state);
    }

    @Test
    void whatNobodySawChangesNothingOfTheCondition() {
        for (int seed = 0; seed < 500; seed++) {
            RandomRecords records = new RandomRecords(seed, Fill.SOMETHING);
            List<Inspection> inspections = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                inspections.add(records.things().inspection(PART));
            }
            List<Inspection> seen =
                    inspections.stream().filter(Inspection::wasSeen).toList();

            PartState all = ConditionRules.stateOf(inspections);
            PartState alone = ConditionRules.stateOf(seen);

            assertThat(all.condition()).isEqualTo(alone.condition());
            assertThat(all.seenOn()).isEqualTo(alone.seenOn());
            assertThat(all.contradictory()).isEqualTo(alone.contradictory());
        }
    }

    @Test
    void noEntryIsNoCondition() {
        assertThat(ConditionRules.stateOf(List.of())).isEqualTo(PartState.NEVER_INSPECTED);
    }

    @Test
    void theOrderOfTheEntriesNeverMatters() {
        Random random = new Random(4711);
        for (int seed = 0; seed < 300; seed++) {
            RandomRecords records = new RandomRecords(seed, Fill.SOMETHING);
            List<Inspection> inspections = new ArrayList<>();
            for (int i = random.nextInt(12); i > 0; i--) {
                inspections.add(records.things().inspection(PART));
            }
            PartState state = ConditionRules.stateOf(inspections);

            for (int shuffle = 0; shuffle < 10; shuffle++) {
                Collections.shuffle(inspections, random);
                assertThat(ConditionRules.stateOf(inspections)).isEqualTo(state);
            }
        }
    }

    /** What is shown is never better than any entry that no other entry surely followed. */
    @Test
    void nothingIsHiddenByAnEntryThatMayBeOlder() {
        for (int seed = 0; seed < 2_000; seed++) {
            RandomRecords records = new RandomRecords(seed, Fill.SOMETHING);
            List<Inspection> inspections = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                inspections.add(records.things().inspection(PART));
            }
            PartState state = ConditionRules.stateOf(inspections);

            for (Inspection one : inspections) {
                boolean followed = inspections.stream()
                        .anyMatch(other -> other.wasSeen()
                                && other.on().earliest().isAfter(one.on().latest()));
                if (one.wasSeen() && !followed) {
                    assertThat(state.condition().orElseThrow().severity())
                            .isGreaterThanOrEqualTo(
                                    one.afterwards().orElseThrow().severity());
                }
            }
        }
    }

    @Test
    void conditionsAreOrderedAndKeepTheirNumbers() {
        assertThat(Condition.values()).extracting(Condition::severity).containsExactly(0, 1, 2, 3, 4);
        assertThat(Condition.worse(Condition.WORN, Condition.GONE)).isEqualTo(Condition.GONE);
        assertThat(Condition.worse(Condition.GONE, Condition.WORN)).isEqualTo(Condition.GONE);
        assertThat(Condition.SOUND.isWorseThan(Condition.SOUND)).isFalse();
        for (Condition condition : Condition.values()) {
            assertThat(Condition.ofSeverity(condition.severity())).isEqualTo(condition);
        }
        assertThatIllegalArgumentException().isThrownBy(() -> Condition.ofSeverity(5));
    }

    @Test
    void statesAndInspectionsThatContradictThemselvesAreRefused() {
        Optional<PartialDate> day = Optional.of(PartialDate.parse("2021"));
        Optional<Condition> sound = Optional.of(Condition.SOUND);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartState(sound, Optional.empty(), false, Optional.empty(), 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartState(Optional.empty(), day, false, Optional.empty(), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new PartState(sound, day, false, Optional.empty(), -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Inspection(
                        PART,
                        day.orElseThrow(),
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(Work.CLEANED),
                        ""));
    }

    @Test
    void workIsNamedOnceAndInItsOrder() {
        Inspection inspection = new Inspection(
                PART,
                PartialDate.parse("2021"),
                "",
                Optional.empty(),
                Optional.of(Condition.SOUND),
                Optional.empty(),
                List.of(Work.CLEANED, Work.ADDED, Work.CLEANED),
                "");

        assertThat(inspection.work()).containsExactly(Work.ADDED, Work.CLEANED);
        assertThat(inspection.afterwards()).contains(Condition.SOUND);
    }
}
