package thalweg.due;

import java.util.List;
import java.util.Optional;

/**
 * What is due, and what nobody can tell of.
 *
 * @param parts that are due, the most urgent first; those of one urgency by canyon and along the line
 * @param unknownAge textile parts of which nothing else is due and whose age nobody knows; none where parts that are due had to
 *     be left out
 * @param count of them and of those that were left out; empty where some were and nobody has counted them
 * @param fits whether there is any part, due or not, that is looked for
 */
public record FoundDue(List<DuePart> parts, List<DuePart> unknownAge, Optional<DueCount> count, boolean fits) {
    public FoundDue {
        parts = List.copyOf(parts);
        unknownAge = List.copyOf(unknownAge);
    }

    /** How many are listed. */
    public int listed() {
        return parts.size() + unknownAge.size();
    }
}
