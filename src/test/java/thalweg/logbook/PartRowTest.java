package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class PartRowTest {

    private final RandomRecords random = new RandomRecords(5, Fill.NOTHING);

    private static Optional<PartialDate> date(@Nullable String text) {
        return Optional.ofNullable(text).map(PartialDate::parse);
    }

    /** Where the order of the two cannot be told, the record is called into doubt rather than trusted. */
    @ParameterizedTest
    @CsvSource({
        "2019-06-14, 2021-05-04, true",
        "2019-06-14, 2019-06-15, true",
        "2019-06-14, 2019-06-14, false",
        "2019-06-14, 2018-01-01, false",
        "2019-06, 2019-06-20, true",
        "2019-06, 2019-06, false",
        "2019-06-14, 2019, true",
        "2019, 2019-06-14, true",
        "2019, 2018, false",
        ", 2001, true",
        "2019, , false"
    })
    void aReplacementAfterThePlacingIsTold(@Nullable String placed, @Nullable String replaced, boolean told) {
        Part part = new Part(
                random.uid(),
                random.uid(),
                "V",
                "left",
                PartKind.BOLT,
                Part.Hardware.UNKNOWN,
                date(placed),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        PartRow row = new PartRow(
                random.uid(),
                "Gorge",
                random.uid(),
                "Upper",
                Optional.empty(),
                true,
                part,
                PartState.NEVER_INSPECTED,
                date(replaced));

        assertThat(row.replacedSince()).isEqualTo(told ? date(replaced) : Optional.empty());
    }
}
