package thalweg.logbook;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Stream;
import thalweg.ledger.Uid;

/**
 * Which rows of a long list somebody looks at, so that they are read together with its order.
 *
 * @param awaited a thing that may be in the list by now, to which the view goes then
 * @param kept the key of the row that is chosen, to which the view goes else, where it is in the list still
 * @param row to which it goes else, counted from 0
 * @param height rows in view, 1 or more
 */
public record InView(Optional<Uid> awaited, OptionalLong kept, int row, int height) {

    /** Rows more at either end, so that neither another size of the view nor a move by a few pages waits for them. */
    private static final int MARGIN = 40;

    /** The rows at the top. */
    public static InView top(int height) {
        return new InView(Optional.empty(), OptionalLong.empty(), 0, height);
    }

    /**
     * The keys of the rows that may be in view, wherever in it the chosen one stands, and of a page above and below.
     *
     * @param found the key of what is awaited, where it is known
     */
    public RowOrder of(RowOrder order, OptionalLong found) {
        int at = Stream.of(found, kept)
                .flatMap(key -> key.stream().boxed())
                .map(order::rowOf)
                .filter(OptionalInt::isPresent)
                .map(OptionalInt::getAsInt)
                .findFirst()
                .orElse(Math.min(row, order.size()));
        return order.between(at - 2 * height - MARGIN, at + 2 * height + MARGIN);
    }
}
