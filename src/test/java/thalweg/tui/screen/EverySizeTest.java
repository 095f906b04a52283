package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.text.Language;
import thalweg.tui.core.Key;

final class EverySizeTest {

    private static final Map<String, Consumer<Walk>> PLACES = new TreeMap<>(Map.ofEntries(
            Map.entry("canyons", walk -> {}),
            Map.entry("search", walk -> walk.type("/om")),
            Map.entry("canyon", walk -> walk.press(Key.Named.ENTER)),
            Map.entry("station", EverySizeTest::toStation),
            Map.entry("part", EverySizeTest::toRing),
            Map.entry("part-amended", walk -> {
                toRing(walk);
                walk.press(Key.Named.DOWN).type("x").type("another ring").press(Key.ctrl('s'));
                walk.press(Key.Named.DOWN).type("ed").press(Key.ctrl('s'));
                walk.type("deep groove").press(Key.ctrl('s'));
            }),
            Map.entry("correct", walk -> {
                toRing(walk);
                walk.press(Key.Named.DOWN).type("e").press(Key.Named.DOWN);
            }),
            Map.entry("withdraw", walk -> {
                toRing(walk);
                walk.press(Key.Named.DOWN).type("xwrong ring");
            }),
            Map.entry("take-out", walk -> walk.press(Key.Named.ENTER).type("x")),
            Map.entry("move", walk -> {
                toStation(walk);
                walk.press(Key.Named.DOWN, 2).type("m");
            }),
            Map.entry("rounds", walk -> {
                walk.press(Key.Named.ENTER).type("rn").press(Key.ctrl('s'));
                walk.press(Key.Named.ESCAPE).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
                walk.type("i").press(Key.Named.UP, 4).press(Key.Named.RIGHT);
                walk.press(Key.Named.DOWN, 4).type("sw").press(Key.ctrl('s'));
                walk.press(Key.Named.ESCAPE).type("r");
            }),
            Map.entry("changes", walk -> {
                toStation(walk);
                walk.type("isw").press(Key.ctrl('s')).type("zh");
            }),
            Map.entry("visit", walk -> {
                toStation(walk);
                walk.type("isw");
            }),
            Map.entry("edit-part", walk -> {
                toStation(walk);
                walk.press(Key.Named.DOWN, 2).type("e").press(Key.Named.DOWN, 8);
            }),
            Map.entry("rig", walk -> {
                toStation(walk);
                walk.type("r").press(Key.Named.RIGHT, 5);
            }),
            Map.entry("rig-loss", walk -> {
                toStation(walk);
                walk.type("rx");
            }),
            Map.entry("rig-compare", walk -> {
                toStation(walk);
                walk.type("rs");
            }),
            Map.entry("rig-why", walk -> {
                toStation(walk);
                walk.type("rw").press(Key.Named.DOWN, 9);
            }),
            Map.entry("rig-form", walk -> {
                toStation(walk);
                walk.type("ro").field(walk.around().say("rig_form.layout"));
            }),
            Map.entry("sheet", walk -> walk.press(Key.Named.ENTER).type("w")),
            Map.entry("keys", walk -> walk.press(Key.Named.ENTER).type("?"))));

    /** Where pictures or scroll bars are drawn in other signs. */
    private static final Set<String> GLYPHS_MATTER = Set.of("canyon", "edit-part", "keys", "rig");

    private static void toStation(Walk walk) {
        walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    private static void toRing(Walk walk) {
        toStation(walk);
        walk.press(Key.Named.DOWN, 5).press(Key.Named.ENTER);
    }

    @Test
    void everyScreenLooksAsItDidAtFourSizes() {
        Sizes.lookAsTheyDid("screen/", PLACES);
    }

    @Test
    void everyScreenDrawsAtEverySize() {
        Sizes.drawEverywhere(PLACES, GLYPHS_MATTER);
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void everyScreenDrawsInEveryLanguage(Language language) {
        Sizes.drawEverywhere(PLACES, language);
    }

    @Test
    void aTerminalThatIsTooSmallIsToldSo() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.resize(11, 39);

            assertThat(walk.screen().replace("\n", " ")).contains("Thalweg needs 40 columns and 12 rows");
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void atTheSmallestSizeTheHelpIsStillOffered(Language language) {
        Sizes.offerHelpAtTheSmallest(PLACES, language);
    }
}
