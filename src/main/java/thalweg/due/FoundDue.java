package thalweg.due;

import java.util.List;

/**
 * What is due, and what nobody can tell of.
 *
 * @param parts that are due, the most urgent first; those of one urgency by canyon and along the line
 * @param unknownAge textile parts of which nothing else is due and whose age nobody knows
 * @param looked at how many parts were looked at
 */
public record FoundDue(List<DuePart> parts, List<DuePart> unknownAge, int looked) {
    public FoundDue {
        parts = List.copyOf(parts);
        unknownAge = List.copyOf(unknownAge);
    }
}
