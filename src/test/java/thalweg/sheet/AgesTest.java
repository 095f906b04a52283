package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.route.PartialDate;

/** The expected ages are counted by hand from the calendar; the day of the sheet is 2026-11-25. */
class AgesTest {

    private final Ages ages = new Ages(SheetPhrases.ENGLISH, SampleSheets.TODAY);

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, less than a day",
        "2026-11-24, 1 day",
        "2026-10-26, 30 days",
        "2026-10-25, 1 month",
        "2026-08-25, 3 months",
        "2025-11-26, 11 months",
        "2025-11-25, 1 year",
        "2024-10-25, 2 years 1 month",
        "1826-11-25, 200 years"
    })
    void aKnownDayHasAnAge(String date, String age) {
        assertThat(ages.of(PartialDate.parse(date))).isEqualTo(age);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-10, at least 25 days",
        "2026-08, at least 2 months",
        "2024-10, at least 2 years",
        "2024-09, at least 2 years 1 month",
        "2025, at least 10 months",
        "2021, at least 4 years",
        "2020, at least 5 years"
    })
    void aMonthOrAYearThatIsOverHasALeastAge(String date, String age) {
        assertThat(ages.of(PartialDate.parse(date))).isEqualTo(age);
    }

    @ParameterizedTest
    @CsvSource({"2026-11, at most 1 month", "2026, at most 11 months"})
    void aMonthOrAYearThatIsNotOverHasAMostAge(String date, String age) {
        assertThat(ages.of(PartialDate.parse(date))).isEqualTo(age);
    }

    @ParameterizedTest
    @CsvSource({"2026-11-26", "2026-12", "2027"})
    void aDateAfterTheSheetSaysSoInsteadOfAnAge(String date) {
        assertThat(ages.ago(PartialDate.parse(date))).isEqualTo(date + ", later than this sheet");
        assertThat(ages.old(PartialDate.parse(date))).isEqualTo(date + ", later than this sheet");
    }
}
