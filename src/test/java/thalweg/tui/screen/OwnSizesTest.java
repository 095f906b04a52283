package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import thalweg.testing.GoldenFile;
import thalweg.text.Width;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** The screens of what stays with one database, at every size. */
final class OwnSizesTest {

    private static final Key SAVE = Key.ctrl('s');

    private static final Map<String, Consumer<Walk>> PLACES = new TreeMap<>(Map.of(
            "trips", walk -> trips(walk),
            "trips of all", walk -> trips(walk).press(Key.Named.ESCAPE, 3).type("t"),
            "trip", walk -> trips(walk).press(Key.Named.ENTER),
            "edit trip", walk -> trips(walk).type("e").press(Key.Named.TAB, 3),
            "take out a trip", walk -> trips(walk).type("x"),
            "no trips", walk -> walk.type("t"),
            "no sheets", walk -> walk.type("o"),
            "private note", walk -> canyon(walk).type("v"),
            "canyon with private notes", OwnSizesTest::canyon,
            "station with a private note",
                    walk -> canyon(walk).press(Key.Named.DOWN, 2).press(Key.Named.ENTER)));

    private static Walk canyon(Walk walk) {
        walk.type("/éclus").press(Key.Named.ENTER).type("v");
        walk.tell(new Message.Pasted("Ask at the sheepfold before the 1st of May.\nNobody answers the telephone."));
        walk.press(SAVE).press(Key.Named.DOWN, 2).type("v");
        return walk.type("loose block above the ring").press(SAVE).press(Key.Named.HOME);
    }

    private static Walk trips(Walk walk) {
        walk.type("/éclus")
                .press(Key.Named.ENTER)
                .type("tnd")
                .press(Key.Named.TAB)
                .type("2026-01-10");
        walk.press(SAVE).type("n").press(Key.Named.TAB).type("2026-11-20").press(SAVE);
        walk.type("n").press(Key.Named.TAB).type("2026-12-05").press(Key.Named.TAB);
        walk.type("course of the upper valley with a name that is long").press(Key.Named.TAB);
        walk.tell(new Message.Pasted("Ana, lead, 62 kg\nBo\nCy, 180 lb\n滝 子, beginner, 55,5 kg"));
        walk.press(Key.Named.TAB).tell(new Message.Pasted("60 m, 9.5 mm low-stretch\n60 m"));
        return walk.press(Key.Named.TAB)
                .type("8:30")
                .press(Key.Named.TAB)
                .type("0:15")
                .press(SAVE);
    }

    @Test
    void everyScreenLooksAsItDidAtThreeSizes() {
        for (int[] size : List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120})) {
            StringBuilder all = new StringBuilder();
            PLACES.forEach((name, way) -> {
                try (Walk walk = Walk.sample(size[0], size[1])) {
                    way.accept(walk);
                    all.append("==== ").append(name).append('\n').append(walk.screen());
                }
            });
            GoldenFile.holds("screen/own-" + size[1] + "x" + size[0] + ".txt", all.toString());
        }
    }

    @Test
    void everyScreenDrawsAtEverySize() {
        PLACES.forEach((name, way) -> {
            try (Walk walk = Walk.sample(24, 80)) {
                way.accept(walk);
                for (int rows = 1; rows <= 60; rows += rows < 16 ? 1 : 11) {
                    for (int columns = 1; columns <= 250; columns += columns < 45 ? 3 : 23) {
                        int most = columns;
                        List<String> lines =
                                walk.resize(rows, columns).screen().lines().toList();
                        assertThat(lines).as("%s at %dx%d", name, columns, rows).hasSize(rows);
                        assertThat(lines)
                                .allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(most));
                    }
                }
            }
        });
    }
}
