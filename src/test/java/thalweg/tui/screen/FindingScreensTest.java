package thalweg.tui.screen;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import thalweg.tui.core.Key;

/** Everything that finds, at every size. */
final class FindingScreensTest {

    private static final Map<String, Consumer<Walk>> PLACES = new TreeMap<>(Map.of(
            "stations", walk -> walk.type("/orgue"),
            "filter-form", walk -> walk.type("f").press(Key.Named.TAB, 7).type("30 m"),
            "filter-fault", walk -> walk.type("f9").press(Key.ctrl('s')),
            "filtered",
                    walk -> walk.type("f..4")
                            .press(Key.Named.TAB, 8)
                            .type("12:00")
                            .press(Key.ctrl('s')),
            "filtered-none", walk -> walk.type("f7").press(Key.ctrl('s')),
            "parts", walk -> walk.type("p"),
            "parts-found", walk -> walk.type("p2022-041 rideau").press(Key.Named.DOWN),
            "parts-none", walk -> walk.type("pxyz"),
            "write-parts", walk -> walk.type("p").press(Key.Named.TAB).type("w"),
            "write-canyons", walk -> walk.type("w")));

    @Test
    void everyScreenLooksAsItDidAtFourSizes() {
        Sizes.lookAsTheyDid("screen/finding-", PLACES);
    }

    @Test
    void everyScreenDrawsAtEverySize() {
        Sizes.drawEverywhere(PLACES, Set.of("parts"));
    }

    @Test
    void atTheSmallestSizeTheHelpIsStillOffered() {
        Sizes.offerHelpAtTheSmallest(PLACES);
    }
}
