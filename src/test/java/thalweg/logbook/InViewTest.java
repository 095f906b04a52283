package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class InViewTest {

    private static final int HEIGHT = 24;

    /** The key of row n is 1000 + n. */
    private static final RowOrder MANY =
            new RowOrder(LongStream.range(1_000, 21_000).toArray());

    private static RowOrder read(OptionalLong awaited, OptionalLong kept, int row) {
        return new InView(Optional.empty(), kept, row, HEIGHT).of(MANY, awaited);
    }

    private static void holdsAPageAround(RowOrder read, int row) {
        assertThat(read.toArray())
                .contains(LongStream.range(row - 2 * HEIGHT, row + 2 * HEIGHT)
                        .map(i -> 1_000 + i)
                        .toArray());
        assertThat(read.size()).isLessThan(10 * HEIGHT);
    }

    @Test
    void theTopIsReadAndNoMoreThanAFewPages() {
        RowOrder read = InView.top(HEIGHT).of(MANY, OptionalLong.empty());

        assertThat(read.at(0)).isEqualTo(1_000);
        assertThat(read.size()).isBetween(2 * HEIGHT, 5 * HEIGHT);
    }

    @Test
    void whatIsAwaitedComesBeforeWhatWasChosenAndThatBeforeTheRow() {
        OptionalLong gone = OptionalLong.of(7);
        OptionalLong kept = OptionalLong.of(9_000);

        holdsAPageAround(read(OptionalLong.of(15_000), kept, 300), 14_000);
        holdsAPageAround(read(gone, kept, 300), 8_000);
        holdsAPageAround(read(OptionalLong.empty(), gone, 300), 300);
    }

    @Test
    void aRowPastTheLastIsAtTheEnd() {
        RowOrder read = read(OptionalLong.empty(), OptionalLong.empty(), 20_040);

        assertThat(read.at(read.size() - 1)).isEqualTo(20_999);
        assertThat(read.size()).isGreaterThanOrEqualTo(2 * HEIGHT);
        assertThat(InView.top(HEIGHT).of(RowOrder.NONE, OptionalLong.empty())).isEqualTo(RowOrder.NONE);
    }
}
