package thalweg.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;

class GradeTest {

    private static <T> List<Optional<T>> unknownOr(List<T> values) {
        List<Optional<T>> all = new ArrayList<>(List.of(Optional.empty()));
        values.forEach(value -> all.add(Optional.of(value)));
        return all;
    }

    @Test
    void everyFrenchGradeIsReadAsItIsPrinted() {
        int grades = 0;
        for (int vertical = 1; vertical <= 7; vertical++) {
            for (int aquatic = 1; aquatic <= 7; aquatic++) {
                for (Optional<Integer> commitment : unknownOr(List.of(1, 2, 3, 4, 5, 6))) {
                    FrenchGrade grade = new FrenchGrade(vertical, aquatic, commitment);
                    assertThat(FrenchGrade.parse(grade.print())).isEqualTo(grade);
                    grades++;
                }
            }
        }
        assertThat(grades).isEqualTo(7 * 7 * 7);
    }

    @Test
    void everyAmericanGradeIsReadAsItIsPrinted() {
        int grades = 0;
        for (int technical = 1; technical <= 4; technical++) {
            for (AmericanGrade.Water water : AmericanGrade.Water.values()) {
                for (Optional<Integer> time : unknownOr(List.of(1, 2, 3, 4, 5, 6))) {
                    for (Optional<AmericanGrade.Risk> risk : unknownOr(List.of(AmericanGrade.Risk.values()))) {
                        AmericanGrade grade = new AmericanGrade(technical, water, time, risk);
                        assertThat(AmericanGrade.parse(grade.print())).isEqualTo(grade);
                        grades++;
                    }
                }
            }
        }
        assertThat(grades).isEqualTo(4 * 7 * 7 * 3);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            v4 a3 III, v4 a3 III
            V4A3III,   v4 a3 III
            v4a3iv,    v4 a3 IV
            ' v1  a7 ', v1 a7
            v 5 a 5 vi, v5 a5 VI
            """)
    void frenchGradesAreReadAsPeopleWriteThem(String typed, String printed) {
        assertThat(FrenchGrade.parse(typed).print()).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            3 B III R, 3 B III R
            3B III,    3 B III
            2a,        2 A
            4c4 vi x,  4 C4 VI X
            3 C R,     3 C R
            1 A I,     1 A I
            """)
    void americanGradesAreReadAsPeopleWriteThem(String typed, String printed) {
        assertThat(AmericanGrade.parse(typed).print()).isEqualTo(printed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "v4", "a3", "v0 a3", "v8 a3", "v4 a0", "v4 a8", "v4 a3 IIII", "v4 a3 VII", "v4 a3 3"})
    void whatIsNoFrenchGradeIsRefused(String typed) {
        assertThatThrownBy(() -> FrenchGrade.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("The French grade \"" + typed + "\" cannot be read; write it as v4 a3 III");
        assertThatThrownBy(() -> FrenchGrade.parse("v4 a3 IVI")).isInstanceOf(InputException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "0 A",
                "5 A",
                "3 D",
                "3 C5",
                "3",
                "B",
                "3 B VII",
                "3 B IIII",
                "3 B III Z",
                "3 B R III",
                "3B 3"
            })
    void whatIsNoAmericanGradeIsRefused(String typed) {
        assertThatThrownBy(() -> AmericanGrade.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("The American grade \"" + typed + "\" cannot be read; write it as 3 B III R");
    }

    @Test
    void gradesOffTheScaleAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new FrenchGrade(0, 1, Optional.empty()));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrenchGrade(1, 8, Optional.empty()));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrenchGrade(1, 1, Optional.of(7)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AmericanGrade(5, AmericanGrade.Water.A, Optional.empty(), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AmericanGrade(1, AmericanGrade.Water.A, Optional.of(0), Optional.empty()));
    }

    @Test
    void theMachinesLanguageChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(FrenchGrade.parse("v4 a3 iii").commitment()).contains(3);
            assertThat(AmericanGrade.parse("3 b iii r").print()).isEqualTo("3 B III R");
        } finally {
            Locale.setDefault(before);
        }
    }
}
