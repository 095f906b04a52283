package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.testing.GoldenFile;
import thalweg.text.Width;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;

/** The parts of a station over the years, on the screen. */
final class TimelineWalkTest {

    private static Walk years(int rows, int columns, Glyphs glyphs) {
        Walk walk = Walk.sample(rows, columns, glyphs);
        walk.type("/éclus").press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
        return walk.type("o");
    }

    @Test
    void itLooksAsItDidAtFourSizes() {
        String all = List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120}, new int[] {60, 200}).stream()
                .map(size -> {
                    try (Walk walk = years(size[0], size[1], size[1] == 40 ? Glyphs.ASCII : Glyphs.BRAILLE)) {
                        return "==== " + size[1] + "x" + size[0] + "\n" + walk.screen();
                    }
                })
                .collect(Collectors.joining());

        GoldenFile.holds("screen/timeline.txt", all);
    }

    @Test
    void enterOpensThePartAndComesBackToIt() {
        try (Walk walk = years(24, 80, Glyphs.BRAILLE)) {
            walk.press(Key.Named.DOWN);
            String before = walk.screen();
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).isNotEqualTo(before);

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @EnumSource(Glyphs.class)
    void itDrawsAtEverySize(Glyphs glyphs) {
        try (Walk walk = years(24, 80, glyphs)) {
            for (int rows = 1; rows <= 60; rows += rows < 16 ? 1 : 11) {
                for (int columns = 1; columns <= 250; columns += columns < 45 ? 4 : 41) {
                    walk.resize(rows, columns);
                    int most = columns;
                    assertThat(walk.screen().lines().toList())
                            .as("%dx%d", columns, rows)
                            .hasSize(rows)
                            .allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(most));
                }
            }
        }
    }
}
