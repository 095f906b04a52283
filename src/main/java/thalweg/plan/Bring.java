package thalweg.plan;

import java.util.List;
import java.util.Optional;
import thalweg.due.Due;
import thalweg.logbook.Condition;
import thalweg.units.Length;

/**
 * What to bring to replace parts on the way.
 *
 * @param items along the line
 * @param webbing to bring, with the reserve, 0 or more
 * @param cord to bring, with the reserve, 0 or more
 * @param links to bring, with the reserve, 0 or more
 * @param notReplaced parts found doubtful, unsafe or gone for which nothing of this is of use, along the line
 * @param notEntered drops of which no part is entered, so that nobody can say what they need
 */
public record Bring(
        List<Item> items, Length webbing, Length cord, int links, List<Needy> notReplaced, List<String> notEntered) {

    public Bring {
        items = List.copyOf(items);
        notReplaced = List.copyOf(notReplaced);
        notEntered = List.copyOf(notEntered);
    }

    /** What is brought. */
    public enum Kind {
        WEBBING,
        CORD,
        LINK
    }

    /** What a length rests on. */
    public enum Basis {
        /** The lengths to cut of a kept analysis. */
        RIG,
        /** The same, and the rule once for each sling whose girth nobody stated. */
        RIG_AND_RULE,
        /** A figure from memory that can be set. */
        RULE,
        /** One for each. */
        EACH
    }

    /**
     * A part that asks for it.
     *
     * @param station its name
     * @param label of the part
     * @param found how it was found last, if that is worse than sound
     * @param due what is due of it most urgently; empty where it is only found bad
     */
    public record Needy(String station, String label, Optional<Condition> found, Optional<Due> due) {}

    /**
     * What replaces parts of one anchor.
     *
     * @param parts that ask for it, at least one
     * @param kind what is brought
     * @param length of webbing or cord together; empty for links
     * @param links 0 for webbing and cord
     * @param basis of the length
     * @param old whether parts have changed since the analysis was made that says the length
     * @param roundUnknown points round which a sling lies whose girth nobody stated
     */
    public record Item(
            List<Needy> parts,
            Kind kind,
            Optional<Length> length,
            int links,
            Basis basis,
            boolean old,
            List<String> roundUnknown) {
        public Item {
            parts = List.copyOf(parts);
            roundUnknown = List.copyOf(roundUnknown);
            if (parts.isEmpty() || length.isPresent() == (kind == Kind.LINK) || links < 0) {
                throw new IllegalArgumentException("something is brought for a part");
            }
        }
    }
}
