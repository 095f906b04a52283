package thalweg.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

class PartialDateTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @ParameterizedTest
    @CsvSource(textBlock = """
            2019-06-14, 2019-06-14, 2019-06-14
            2019-06,    2019-06-01, 2019-06-30
            2019-02,    2019-02-01, 2019-02-28
            2020-02,    2020-02-01, 2020-02-29
            2019,       2019-01-01, 2019-12-31
            1800,       1800-01-01, 1800-12-31
            9999-12-31, 9999-12-31, 9999-12-31
            """)
    void aDateMeansEveryDayFromItsEarliestToItsLatest(String text, LocalDate earliest, LocalDate latest) {
        PartialDate date = PartialDate.parse(" " + text + " ");

        assertThat(date.earliest()).isEqualTo(earliest);
        assertThat(date.latest()).isEqualTo(latest);
        assertThat(date.isExact()).isEqualTo(earliest.equals(latest));
        assertThat(date.print()).isEqualTo(text);
    }

    @Test
    void everyDayIsReadAsItIsPrinted() {
        for (LocalDate day = LocalDate.of(2019, 12, 1); day.isBefore(LocalDate.of(2021, 2, 1)); day = day.plusDays(1)) {
            assertThat(PartialDate.parse(day.toString())).isEqualTo(PartialDate.of(day));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "19",
                "2019-6",
                "May 2019",
                "14.06.2019",
                "2019/06/14",
                "06-2019",
                "2019-06-14T10:00",
                "٢٠١٩",
                "yesterday"
            })
    void whatCannotBeReadIsSaidToBeSo(String text) {
        assertThatThrownBy(() -> PartialDate.parse(text))
                .isInstanceOf(InputException.class)
                .hasMessage("The date \"" + text
                        + "\" cannot be read; write a day, month or year as 2019-06-14, 2019-06 or 2019.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2019-00", "2019-13", "2019-06-00", "2019-06-31", "2019-02-29"})
    void whatDoesNotExistIsSaidToBeSo(String text) {
        assertThatThrownBy(() -> PartialDate.parse(text))
                .hasMessage("The date \"" + text
                        + "\" does not exist; write a day, month or year as 2019-06-14, 2019-06 or 2019.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1799", "1066", "0000", "1799-12-31"})
    void whatIsTooEarlyIsSaidToBeSo(String text) {
        assertThatThrownBy(() -> PartialDate.parse(text))
                .hasMessage("The date \"" + text
                        + "\" lies before 1800; write a day, month or year as 2019-06-14, 2019-06 or 2019.");
    }

    @Test
    void nothingWasSeenBefore1900ThoughAPartMayHaveBeenThere() {
        assertThat(PartialDate.parse("1899-12-31").tooEarlyToBeSeen().map(Sentence::toString))
                .contains("lies before 1900");
        assertThat(PartialDate.parse("1900").tooEarlyToBeSeen()).isEmpty();
    }

    @Test
    void aLongTextIsNotRepeatedWhole() {
        assertThatThrownBy(() -> PartialDate.parse("2".repeat(999))).hasMessageMatching(".{0,140}");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-25, P0D
            2026-11-24, P1D
            2026-11, P0D
            2026-10, P25D
            2026, P0D
            2025, P10M25D
            2019-06-14, P7Y5M11D
            2027-01-01, P0D
            """)
    void anAgeIsTheLeastThatItCanBe(String text, Period age) {
        PartialDate date = PartialDate.parse(text);

        assertThat(date.ageAtLeast(TODAY)).isEqualTo(age);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-25, true
            2026-11-26, false
            2026-11,    true
            2026-12,    false
            2026,       true
            2027,       false
            """)
    void aDateHasBegunWhenItsFirstDayHasCome(String text, boolean begun) {
        assertThat(PartialDate.parse(text).hasBegunBy(TODAY)).isEqualTo(begun);
    }

    @Test
    void datesSortByTheirLastDayAndExactOnesAfterVagueOnes() {
        List<PartialDate> sorted =
                List.of("2019-12-31", "2019", "2019-06-30", "2019-12", "2019-06", "2019-06-14").stream()
                        .map(PartialDate::parse)
                        .sorted(PartialDate.BY_LAST_DAY)
                        .toList();

        assertThat(sorted)
                .map(PartialDate::print)
                .containsExactly("2019-06-14", "2019-06", "2019-06-30", "2019", "2019-12", "2019-12-31");
    }

    @Test
    void nonsenseIsRefused() {
        for (int[] wrong :
                new int[][] {{2019, 13, 1}, {2019, 2, 30}, {2019, 0, 1}, {2019, -1, 0}, {2019, 1, -1}, {1, 1, 1}}) {
            assertThatIllegalArgumentException().isThrownBy(() -> new PartialDate(wrong[0], wrong[1], wrong[2]));
        }
    }

    /** Some machines have other digits, and Thailand another count of years. */
    @Test
    void theMachinesLanguageChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            for (String language : new String[] {"ar-EG", "th-TH-u-ca-buddhist-nu-thai"}) {
                Locale.setDefault(Locale.forLanguageTag(language));
                assertThat(PartialDate.parse("2019-06-14").print()).isEqualTo("2019-06-14");
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
