package thalweg.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OrderKeyTest {

    private static String neighbour(List<String> keys, int at) {
        return at < 0 || at >= keys.size() ? "" : keys.get(at);
    }

    private static void assertStrictlySorted(List<String> keys) {
        for (int i = 1; i < keys.size(); i++) {
            assertThat(keys.get(i - 1)).isLessThan(keys.get(i));
        }
        assertThat(keys).allMatch(OrderKey::isKey).noneMatch(key -> key.endsWith("0"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void thousandsOfRandomInsertionsStaySortedAndShort(long seed) {
        Random random = new Random(seed);
        List<String> keys = new ArrayList<>();

        for (int i = 0; i < 5_000; i++) {
            int at = random.nextInt(keys.size() + 1);
            keys.add(at, OrderKey.between(neighbour(keys, at - 1), neighbour(keys, at)));
        }

        assertStrictlySorted(keys);
        assertThat(keys).allMatch(key -> key.length() <= 12);
    }

    /** What people do: mostly at the end, often beside the last change, now and then anywhere. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void insertionsInRunsStaySorted(long seed) {
        Random random = new Random(seed);
        List<String> keys = new ArrayList<>();
        int last = 0;

        for (int i = 0; i < 1_000; i++) {
            int choice = random.nextInt(10);
            int at = choice < 5 ? keys.size() : choice < 8 ? Math.min(last + 1, keys.size()) : random.nextInt(i + 1);
            keys.add(at, OrderKey.between(neighbour(keys, at - 1), neighbour(keys, at)));
            last = at;
        }

        assertStrictlySorted(keys);
    }

    @Test
    void aLineOfFiveHundredPlacesFitsWhenEachIsAddedAtTheSameEnd() {
        List<String> appended = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            appended.add(OrderKey.between(neighbour(appended, i - 1), ""));
        }
        List<String> prepended = new ArrayList<>();
        for (int i = 0; i < 250; i++) {
            prepended.add(0, OrderKey.between("", neighbour(prepended, 0)));
        }

        assertStrictlySorted(appended);
        assertStrictlySorted(prepended);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            '',   '',   V
            V,    '',   Z
            '',   1,    0V
            1,    2,    1V
            1,    11,   10V
            z,    '',   zV
            A,    AB,   A5
            '',   0001, 0000V
            """)
    void thereIsAlwaysRoom(String before, String after, String between) {
        assertThat(OrderKey.between(before, after)).isEqualTo(between);
        assertThat(between).isGreaterThan(before);
        if (!after.isEmpty()) {
            assertThat(between).isLessThan(after);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            B,   A
            A,   A
            1,   10
            A0,  ''
            '',  0
            a-b, ''
            '',  \u00e9
            """)
    void whatLeavesNoRoomIsRefused(String before, String after) {
        assertThatIllegalArgumentException().isThrownBy(() -> OrderKey.between(before, after));
    }

    @Test
    void onlyShortTextsOfTheAlphabetAreKeys() {
        assertThat(List.of("V", "0V", "zzzz", "a".repeat(64))).allMatch(OrderKey::isKey);
        assertThat(List.of("", "0", "V0", " V", "V ", "\u00e9", "1.5", "a".repeat(65)))
                .noneMatch(OrderKey::isKey);
    }
}
