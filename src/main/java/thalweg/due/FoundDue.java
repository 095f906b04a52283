package thalweg.due;

import java.util.List;

/**
 * What is due, and what nobody can tell of.
 *
 * @param parts that are due, the most urgent first; those of one urgency by canyon and along the line
 * @param unknownAge textile parts of which nothing else is due and whose age nobody knows
 * @param due how many parts are due, those that are not among the parts for want of room too
 * @param unknown how many textile parts are of unknown age, those that are not listed for want of room too
 * @param fits whether there is any part, due or not, that is looked for
 */
public record FoundDue(List<DuePart> parts, List<DuePart> unknownAge, int due, int unknown, boolean fits) {
    public FoundDue {
        parts = List.copyOf(parts);
        unknownAge = List.copyOf(unknownAge);
    }

    /** How many are not listed for want of room. */
    public int left() {
        return due - parts.size() + unknown - unknownAge.size();
    }
}
