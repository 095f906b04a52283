package thalweg.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.json.Json;

class HeadsTest {

    private static final Uid THING = Uid.minted(1, new UUID(1, 1));

    private static Json.Fields named(String name) {
        return Json.fields().put("name", name).done();
    }

    private final Revision first = Revision.first(THING, "canyon", named("a"), "Ana", "1");
    private final Revision second = first.next(named("b"), false, "Ana", "2");
    private final Revision fork = first.next(named("c"), false, "Bo", "0");
    private final Revision third = second.next(named("d"), false, "Ana", "3");

    @Test
    void theLastOfALineIsTheOnlyHead() {
        assertThat(Heads.of(List.of(third, first, second))).containsExactly(third);
        assertThat(Heads.of(List.of())).isEmpty();
    }

    @Test
    void branchesAreAllHeadsTheDeepestFirstWhateverTheOrderGiven() {
        List<Revision> all = new ArrayList<>(List.of(first, second, fork, third));
        for (int seed = 0; seed < 24; seed++) {
            Collections.shuffle(all, new Random(seed));
            assertThat(Heads.of(all)).containsExactly(third, fork);
        }
    }

    @Test
    void headsOfOneGenerationGoByHash() {
        List<Revision> heads = Heads.of(List.of(first, second, fork));

        assertThat(heads).containsExactlyInAnyOrder(second, fork);
        assertThat(heads.get(0).hash()).isLessThan(heads.get(1).hash());
    }

    @Test
    void aMergeLeavesOneHead() {
        Revision merge =
                new Revision(THING, "canyon", named("e"), false, List.of(third.hash(), fork.hash()), 4, "Cy", "4");

        assertThat(Heads.of(List.of(first, second, fork, third, merge))).containsExactly(merge);
    }
}
