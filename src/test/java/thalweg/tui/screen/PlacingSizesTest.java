package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.testing.GoldenFile;
import thalweg.text.Width;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;

final class PlacingSizesTest {

    private static final Key SAVE = Key.ctrl('s');
    private static final String FILES = PlacingWalkTest.FILES;

    private static final List<int[]> SIZES =
            List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120}, new int[] {60, 200});

    @TempDir
    private Path folder = Path.of("");

    private Map<String, Consumer<Walk>> places() {
        return new TreeMap<>(Map.of(
                "form", walk -> walk.type("g"),
                "broken",
                        walk -> walk.press(Key.Named.ENTER)
                                .type("g")
                                .type(broken())
                                .press(SAVE),
                "undecided", walk -> onSample(walk, "characters.gpx"),
                "decided",
                        walk -> {
                            onSample(walk, "waypoints.gpx");
                            walk.type("as")
                                    .press(Key.Named.TAB)
                                    .press(Key.Named.UP, 5)
                                    .type("p");
                        },
                "line",
                        walk -> {
                            onSample(walk, "characters.gpx");
                            walk.press(Key.Named.TAB).type("f").press(Key.Named.UP, 2);
                        },
                "waypoint",
                        walk -> {
                            onSample(walk, "waypoints.gpx");
                            walk.press(Key.Named.DOWN).press(Key.Named.ENTER);
                        },
                "help",
                        walk -> {
                            onSample(walk, "odd-order.gpx");
                            walk.type("i");
                        },
                "keys",
                        walk -> {
                            onSample(walk, "waypoints.gpx");
                            walk.type("?");
                        }));
    }

    private static void onSample(Walk walk, String file) {
        walk.press(Key.Named.ENTER).type("g").type(FILES + file).press(SAVE);
    }

    private String broken() {
        try {
            Path file = folder.resolve("x.gpx");
            return Files.writeString(file, "<gpx>\n" + "<wpt lat='1'/>\n".repeat(30) + "</gpx>")
                    .toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyScreenLooksAsItDidAtFourSizes() {
        for (int[] size : SIZES) {
            StringBuilder all = new StringBuilder();
            places().forEach((name, way) -> {
                if (name.equals("broken")) {
                    return;
                }
                try (Walk walk = Walk.sample(size[0], size[1])) {
                    way.accept(walk);
                    all.append("==== ").append(name).append('\n').append(walk.screen());
                }
            });
            GoldenFile.holds("screen/placing-" + size[1] + "x" + size[0] + ".txt", all.toString());
        }
    }

    @Test
    void everyScreenDrawsAtEverySize() {
        places().forEach((name, way) -> {
            try (Walk walk = Walk.sample(24, 80, Glyphs.ASCII)) {
                way.accept(walk);
                for (int rows = 1; rows <= 60; rows += rows < 24 ? 1 : 9) {
                    for (int columns = 1; columns <= 250; columns += columns < 45 ? 3 : 19) {
                        walk.resize(rows, columns);
                        List<String> lines = walk.screen().lines().toList();
                        assertThat(lines).as("%s at %dx%d", name, columns, rows).hasSize(rows);
                        int most = columns;
                        assertThat(lines)
                                .allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(most));
                    }
                }
            }
        });
    }

    @Test
    void atTheSmallestSizeTheHelpIsStillOffered() {
        places().forEach((name, way) -> {
            try (Walk walk = Walk.sample(12, 40)) {
                way.accept(walk);

                String foot = walk.screen().lines().reduce("", (one, other) -> other);
                assertThat(foot).as(name).matches("(\\? help|F1 help|Esc close).*");
            }
        });
    }
}
