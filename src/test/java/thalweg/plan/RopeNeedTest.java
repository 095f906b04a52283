package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;
import thalweg.testing.SampleRecords;
import thalweg.units.Length;

final class RopeNeedTest {

    private static CanyonRecord canyon() {
        return SampleRecords.CANYONS.stream()
                .filter(canyon -> canyon.canyon().name().contains("Éclusaune"))
                .findFirst()
                .orElseThrow();
    }

    /** Read off the sample data by hand: the way round a jump, the bypass of a strainer and a handline take rope too. */
    @Test
    void everyPlaceWithARopeIsReachedAndNotTheDropsAlone() {
        assertThat(RopeNeed.of(canyon()))
                .extracting(RopeNeed::place, need -> need.length().map(Length::metres), RopeNeed::measured)
                .contains(
                        tuple(2, Optional.of(9.5), true),
                        tuple(4, Optional.of(7.0), true),
                        tuple(7, Optional.of(15.0), true),
                        tuple(9, Optional.of(26.0), true),
                        tuple(11, Optional.of(9.0), true))
                .doesNotContainNull();
        assertThat(RopeNeed.of(canyon())).extracting(RopeNeed::place).doesNotContain(1, 3, 8);
    }
}
