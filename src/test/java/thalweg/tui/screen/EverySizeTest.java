package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import thalweg.testing.GoldenFile;
import thalweg.text.Width;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;

final class EverySizeTest {

    private static final Map<String, Consumer<Walk>> PLACES = new TreeMap<>(Map.of(
            "canyons", walk -> {},
            "search", walk -> walk.type("/om"),
            "canyon", walk -> walk.press(Key.Named.ENTER),
            "station",
                    walk -> walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER),
            "part",
                    walk -> {
                        walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
                        walk.press(Key.Named.DOWN, 5).press(Key.Named.ENTER);
                    },
            "visit",
                    walk -> {
                        walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
                        walk.type("isw");
                    },
            "edit-part",
                    walk -> {
                        walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
                        walk.press(Key.Named.DOWN, 2).type("e").press(Key.Named.DOWN, 8);
                    },
            "rig",
                    walk -> {
                        walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
                        walk.type("r").press(Key.Named.RIGHT, 5);
                    },
            "sheet", walk -> walk.press(Key.Named.ENTER).type("w"),
            "keys", walk -> walk.press(Key.Named.ENTER).type("?")));

    static {
        PLACES.put("rig-loss", walk -> {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.type("rx");
        });
        PLACES.put("rig-form", walk -> {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.type("ro").press(Key.Named.DOWN, 4);
        });
    }

    private static final List<int[]> SIZES =
            List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120}, new int[] {60, 200});

    @Test
    void everyScreenLooksAsItDidAtFourSizes() {
        for (int[] size : SIZES) {
            StringBuilder all = new StringBuilder();
            PLACES.forEach((name, way) -> {
                try (Walk walk = Walk.sample(size[0], size[1])) {
                    way.accept(walk);
                    all.append("==== ").append(name).append('\n').append(walk.screen());
                }
            });
            GoldenFile.holds("screen/" + size[1] + "x" + size[0] + ".txt", all.toString());
        }
    }

    @Test
    void everyScreenDrawsAtEverySize() {
        for (Glyphs glyphs : Glyphs.values()) {
            PLACES.forEach((name, way) -> {
                try (Walk walk = Walk.sample(24, 80, glyphs)) {
                    way.accept(walk);
                    for (int rows = 1; rows <= 60; rows += rows < 16 ? 1 : 11) {
                        for (int columns = 1; columns <= 250; columns += columns < 45 ? 3 : 23) {
                            walk.resize(rows, columns);
                            List<String> lines = walk.screen().lines().toList();
                            assertThat(lines)
                                    .as("%s at %dx%d", name, columns, rows)
                                    .hasSize(rows);
                            int most = columns;
                            assertThat(lines)
                                    .allSatisfy(
                                            line -> assertThat(Width.of(line)).isLessThanOrEqualTo(most));
                        }
                    }
                }
            });
        }
    }

    @Test
    void aTerminalThatIsTooSmallIsToldSo() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.resize(11, 39);

            assertThat(walk.screen().replace("\n", " ")).contains("Thalweg needs 40 columns and 12 rows");
        }
    }

    @Test
    void atTheSmallestSizeTheHelpIsStillOffered() {
        for (String name : PLACES.keySet()) {
            try (Walk walk = Walk.sample(12, 40)) {
                PLACES.getOrDefault(name, way -> {}).accept(walk);

                String foot = walk.screen().lines().reduce("", (one, other) -> other);
                assertThat(foot).as(name).matches("(\\? help|F1 help|Esc close).*");
            }
        }
    }
}
