package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.service.LoadPhrases;
import thalweg.settings.Theme;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.lanterna.Painted;

/** A theme changes how things look and never what they say. */
final class ThemesTest {

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyScreenSaysTheSameInEveryTheme(Theme theme) {
        try (Walk walk = Walk.sample(24, 80)) {
            for (Go place : PlacesTest.places(walk)) {
                walk.openAt(place);
                Canvas canvas = walk.shell().draw();
                assertThat(Painted.text(canvas, theme))
                        .as("%s", place.getClass())
                        .isEqualTo(canvas.text());
            }
        }
    }

    @Test
    void noTwoConditionsDifferByColourAlone() {
        var phrases = LoadPhrases.english();
        Set<String> marks = new HashSet<>();
        Set<String> words = new HashSet<>();
        Stream.concat(
                        Stream.of(Optional.<Condition>empty()),
                        Arrays.stream(Condition.values()).map(Optional::of))
                .forEach(condition -> {
                    String mark = ConditionWords.mark(condition, phrases);
                    assertThat(Width.of(mark)).isEqualTo(1);
                    marks.add(mark);
                    words.add(ConditionWords.told(condition, phrases));
                });

        assertThat(marks).hasSize(Condition.values().length + 1);
        assertThat(words).hasSize(Condition.values().length + 1);
    }
}
