package thalweg.logbook;

import java.util.OptionalLong;

/**
 * From one number to another, both included. As a question it is what is wanted; as an answer it is what is surely
 * reached and surely not passed, which is one number where something is known to the point.
 *
 * @param from empty where there is no lower end
 * @param to empty where there is no upper end; not below the lower
 */
public record Span(OptionalLong from, OptionalLong to) {

    /** Every number. */
    public static final Span ANY = new Span(OptionalLong.empty(), OptionalLong.empty());

    public Span {
        if (from.isPresent() && to.isPresent() && from.getAsLong() > to.getAsLong()) {
            throw new IllegalArgumentException("a span does not end before it begins");
        }
    }

    /** From the one to the other. */
    public static Span between(long from, long to) {
        return new Span(OptionalLong.of(from), OptionalLong.of(to));
    }

    /** That number or more. */
    public static Span from(long number) {
        return new Span(OptionalLong.of(number), OptionalLong.empty());
    }

    /** That number or less. */
    public static Span to(long number) {
        return new Span(OptionalLong.empty(), OptionalLong.of(number));
    }

    /** Whether every number is in it. */
    public boolean isAny() {
        return from.isEmpty() && to.isEmpty();
    }
}
