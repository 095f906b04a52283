package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.InputException;
import thalweg.units.UnitSystem;

class CanyonMeasureTest {

    @ParameterizedTest
    @CsvSource({
        "VERTICAL, 3..5, 3, 5, v3..v5",
        "VERTICAL, v4, 4, 4, v4",
        "VERTICAL, V2 .. v3, 2, 3, v2..v3",
        "AQUATIC, 2.., 2, , a2..",
        "COMMITMENT, ..iv, , 4, ..IV",
        "COMMITMENT, 2, 2, 2, II",
        "TECHNICAL, 3, 3, 3, 3",
        "WATER, b..c2, 1, 3, B..C2",
        "WATER, C, 2, 5, C1..C4",
        "WATER, ..C, , 5, ..C4",
        "WATER, C.., 2, , C1..",
        "TIME_GRADE, III..VI, 3, 6, III..VI",
        "RISK, none, 0, 0, none",
        "RISK, ..r, , 1, ..R",
        "LONGEST_DROP, 30 m, , 3000, ..30 m",
        "LONGEST_DROP, 100 ft.., 3048, , 30.5 m..",
        "LONGEST_DROP, 10..30, 1000, 3000, 10 m..30 m",
        "MINUTES, 5:30, , 330, ..5:30",
        "MINUTES, 1 h 30 .. 240 min, 90, 240, 1:30..4:00",
        "WORST, doubtful, 2, , doubtful..",
        "WORST, ..worn, , 1, ..worn"
    })
    void aRangeIsReadAndWrittenAsItIsRead(
            String measure, String text, @Nullable Long from, @Nullable Long to, String printed) {
        CanyonMeasure asked = CanyonMeasure.valueOf(measure);

        Span span = asked.read(text);

        assertThat(span.from()).isEqualTo(from == null ? OptionalLong.empty() : OptionalLong.of(from));
        assertThat(span.to()).isEqualTo(to == null ? OptionalLong.empty() : OptionalLong.of(to));
        assertThat(asked.print(span, UnitSystem.METRIC)).isEqualTo(printed);
    }

    @Test
    void whatWasWrittenIsReadAgainAsTheSame() {
        for (CanyonMeasure measure : CanyonMeasure.values()) {
            for (String text : new String[] {"2", "1..3", "..2", "2.."}) {
                String known = switch (measure) {
                    case WATER -> text.replace('1', 'A').replace('2', 'B').replace("3", "C3");
                    case RISK -> text.replace("1", "none").replace('2', 'R').replace('3', 'X');
                    case WORST ->
                        text.replace("1", "sound").replace("2", "worn").replace("3", "gone");
                    case VERTICAL, AQUATIC, COMMITMENT, TECHNICAL, TIME_GRADE, LONGEST_DROP, MINUTES -> text;
                };
                Span span = measure.read(known);

                assertThat(measure.read(measure.print(span, UnitSystem.METRIC)))
                        .as(known)
                        .isEqualTo(span);
            }
        }
    }

    @Test
    void nothingAsksForNothing() {
        assertThat(CanyonMeasure.VERTICAL.read("  ")).isEqualTo(Span.ANY);
        assertThat(CanyonMeasure.VERTICAL.print(Span.ANY, UnitSystem.METRIC)).isEmpty();
        assertThat(new CanyonFilter(" ", "", Map.of(CanyonMeasure.WORST, Span.ANY), false, true).isNone())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "VERTICAL, 0",
        "VERTICAL, 8",
        "VERTICAL, a3",
        "VERTICAL, 3-5",
        "VERTICAL, 3...5",
        "VERTICAL, 5..3",
        "VERTICAL, ..",
        "COMMITMENT, VII",
        "WATER, C5",
        "RISK, 0",
        "LONGEST_DROP, -1 m",
        "LONGEST_DROP, 1 000 m..",
        "MINUTES, 0",
        "WORST, never"
    })
    void whatCannotBeReadIsRefusedWithTheWayToWriteIt(String measure, String text) {
        assertThatThrownBy(() -> CanyonMeasure.valueOf(measure).read(text))
                .isInstanceOf(InputException.class)
                .hasMessageMatching("The .*\\.");
    }

    @Test
    void theLanguageOfThePersonMakesNoDifference() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));

            assertThat(CanyonMeasure.COMMITMENT.read("iii")).isEqualTo(Span.between(3, 3));
            assertThat(CanyonMeasure.WORST.read("DOUBTFUL")).isEqualTo(Span.from(2));
            assertThat(CanyonMeasure.LONGEST_DROP.print(Span.to(1850), UnitSystem.METRIC))
                    .isEqualTo("..18.5 m");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aSpanDoesNotEndBeforeItBegins() {
        assertThatIllegalArgumentException().isThrownBy(() -> Span.between(3, 2));
    }
}
