package thalweg.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.ledger.Reorder.Member;

class ReorderTest {

    private static final Comparator<Member> SHOWN =
            Comparator.comparing(Member::key).thenComparing(Member::uid);

    private static Uid uid(int number) {
        return Uid.minted(number, new UUID(number, number));
    }

    /** Members with those keys, in the order in which they would be shown. */
    private static List<Member> line(String keys) {
        List<Member> line = new ArrayList<>();
        if (!keys.isEmpty()) {
            for (String key : keys.split(" ", -1)) {
                line.add(new Member(uid(line.size()), key));
            }
        }
        line.sort(SHOWN);
        return line;
    }

    private static List<Uid> after(List<Member> others, Uid moved, Map<Uid, String> changes) {
        List<Member> all = new ArrayList<>();
        others.forEach(member -> all.add(new Member(member.uid(), changes.getOrDefault(member.uid(), member.key()))));
        all.add(new Member(moved, changes.getOrDefault(moved, "")));
        all.sort(SHOWN);
        return all.stream().map(Member::uid).toList();
    }

    private static List<Uid> wanted(List<Member> others, Uid moved, int at) {
        List<Uid> wanted = new ArrayList<>(others.stream().map(Member::uid).toList());
        wanted.add(at, moved);
        return wanted;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''          | 0 | 1
            V           | 0 | 1
            V           | 1 | 1
            A B C       | 0 | 1
            A B C       | 1 | 1
            A B C       | 3 | 1
            A A         | 0 | 1
            A A         | 1 | 2
            A A         | 2 | 1
            A A A A     | 1 | 2
            A A A A     | 2 | 3
            A A A A     | 3 | 2
            A B B B B C | 1 | 1
            A B B B B C | 2 | 2
            A B B B B C | 5 | 1
            """)
    void noMoreKeysChangeThanMust(String keys, int at, int changed) {
        List<Member> others = line(keys);
        Uid moved = uid(99);

        Map<Uid, String> changes = Reorder.keys(others, moved, at);

        assertThat(changes).hasSize(changed).containsKey(moved);
        assertThat(after(others, moved, changes)).isEqualTo(wanted(others, moved, at));
        assertThat(changes.values()).allMatch(OrderKey::isKey);
    }

    /** Two databases that never met may have given the same keys: few different ones among many members. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void anythingCanBeMovedAnywhereAgainAndAgain(long seed) {
        Random random = new Random(seed);
        List<Member> line = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            line.add(new Member(
                    uid(random.nextInt(1_000_000)),
                    "ABC".substring(random.nextInt(3)).substring(0, 1)));
        }
        line.sort(SHOWN);

        for (int step = 0; step < 300; step++) {
            Member moved = line.remove(random.nextInt(line.size()));
            int at = random.nextInt(line.size() + 1);
            Map<Uid, String> changes = Reorder.keys(line, moved.uid(), at);

            List<Uid> wanted = wanted(line, moved.uid(), at);
            line.add(moved);
            line.replaceAll(member -> new Member(member.uid(), changes.getOrDefault(member.uid(), member.key())));
            line.sort(SHOWN);
            assertThat(line).extracting(Member::uid).containsExactlyElementsOf(wanted);
        }
    }

    /** Keys grow where somebody always moves into the same gap; before they are too long, a neighbour gives way. */
    @Test
    void aGapThatIsFullIsWidened() {
        List<Member> line = line("A B");
        for (int i = 0; i < 2_000; i++) {
            Uid moved = uid(1_000 + i);
            Map<Uid, String> changes = Reorder.keys(line, moved, 1);
            assertThat(changes.values()).allMatch(OrderKey::isKey);
            List<Uid> wanted = wanted(line, moved, 1);
            line.add(new Member(moved, ""));
            line.replaceAll(member -> new Member(member.uid(), changes.getOrDefault(member.uid(), member.key())));
            line.sort(SHOWN);
            assertThat(line).extracting(Member::uid).containsExactlyElementsOf(wanted);
            line.remove(line.size() - 2);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            -1, ''
            0,  A
            1,  B
            2,  B
            3,  C
            """)
    void somethingNewComesAfterAllOfTheSameKey(int at, String notBefore) {
        List<String> line = List.of("A", "B", "B", "C");

        String key = Reorder.keyAfter(line, at);

        assertThat(key).isGreaterThan(notBefore);
        assertThat(line.stream().filter(other -> other.compareTo(notBefore) > 0))
                .allMatch(other -> other.compareTo(key) > 0);
    }

    @Test
    void aPlaceOutsideTheLineIsABug() {
        assertThatIllegalArgumentException().isThrownBy(() -> Reorder.keys(line("A"), uid(9), 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Reorder.keys(line("A"), uid(9), -1));
    }
}
