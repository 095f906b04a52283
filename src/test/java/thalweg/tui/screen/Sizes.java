package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import thalweg.testing.GoldenFile;
import thalweg.text.Language;
import thalweg.text.Width;
import thalweg.tui.core.Glyphs;

/** Looks at places of the program in terminals of every size. A place is a name and the way to it. */
final class Sizes {

    private static final List<int[]> FOUR =
            List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120}, new int[] {60, 200});

    private Sizes() {}

    /** At four sizes every place looks as the golden files say, one a size. */
    static void lookAsTheyDid(String files, Map<String, Consumer<Walk>> places) {
        for (int[] size : FOUR) {
            StringBuilder all = new StringBuilder();
            places.forEach((name, way) -> {
                try (Walk walk = Walk.sample(size[0], size[1])) {
                    way.accept(walk);
                    all.append("==== ").append(name).append('\n').append(walk.screen());
                }
            });
            GoldenFile.holds(files + size[1] + "x" + size[0] + ".txt", all.toString());
        }
    }

    /**
     * At every size every place is drawn, as high as the terminal and no line too wide.
     *
     * @param glyphsMatter names of places where pictures or scroll bars are drawn in other signs
     */
    static void drawEverywhere(Map<String, Consumer<Walk>> places, Set<String> glyphsMatter) {
        for (Glyphs glyphs : Glyphs.values()) {
            places.forEach((name, way) -> {
                if (glyphs != Glyphs.BRAILLE && !glyphsMatter.contains(name)) {
                    return;
                }
                try (Walk walk = Walk.sample(24, 80, glyphs)) {
                    way.accept(walk);
                    drawAll(walk, name);
                }
            });
        }
    }

    /** The same in that language. */
    static void drawEverywhere(Map<String, Consumer<Walk>> places, Language language) {
        places.forEach((name, way) -> {
            try (Walk walk = Walk.sample(24, 80, language)) {
                way.accept(walk);
                drawAll(walk, name + " in " + language.word());
            }
        });
    }

    /** What is on the screen is drawn at every size, as high as the terminal and no line too wide. */
    static void drawAll(Walk walk, String name) {
        for (int rows = 1; rows <= 60; rows += rows < 16 ? 1 : 11) {
            for (int columns = 1; columns <= 250; columns += columns < 45 ? 3 : 23) {
                walk.resize(rows, columns);
                List<String> lines = walk.screen().lines().toList();
                assertThat(lines).as("%s at %dx%d", name, columns, rows).hasSize(rows);
                int most = columns;
                assertThat(lines).allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(most));
            }
        }
    }

    /** At the smallest size the foot begins with the way to the help. */
    static void offerHelpAtTheSmallest(Map<String, Consumer<Walk>> places) {
        offerHelpAtTheSmallest(places, Language.EN);
    }

    /** The same in that language. */
    static void offerHelpAtTheSmallest(Map<String, Consumer<Walk>> places, Language language) {
        places.forEach((name, way) -> {
            try (Walk walk = Walk.sample(12, 40, language)) {
                way.accept(walk);
                String help = Pattern.quote(walk.around().say("foot.help"));
                String close = Pattern.quote(walk.around().say("foot.close"));

                String foot = walk.screen().lines().reduce("", (one, other) -> other);
                assertThat(foot).as(name).matches("(\\? " + help + "|F1 " + help + "|Esc " + close + ").*");
            }
        });
    }
}
