package thalweg.draft;

import java.util.Locale;
import java.util.Optional;
import thalweg.ledger.Uid;

/**
 * Which form a draft belongs to. Two forms about the same have the same key, whenever they are opened.
 *
 * @param kind of form
 * @param isNew whether something is entered that is not there yet; else what is there is changed
 * @param about the thing or entry that is changed, or in or about which something new is entered; empty for a new canyon
 */
public record DraftKey(DraftKind kind, boolean isNew, Optional<Uid> about) {

    public DraftKey {
        if (about.isEmpty() && !isNew) {
            throw new IllegalArgumentException("what is changed has a name");
        }
    }

    /** A form that changes what has that name. */
    public static DraftKey of(DraftKind kind, Uid about) {
        return new DraftKey(kind, false, Optional.of(about));
    }

    /** A form that enters something new in or about what has that name. */
    public static DraftKey anew(DraftKind kind, Uid about) {
        return new DraftKey(kind, true, Optional.of(about));
    }

    /** A form that changes what is there, or enters something new within another thing. */
    public static DraftKey of(DraftKind kind, Optional<Uid> there, Uid within) {
        return there.map(uid -> of(kind, uid)).orElseGet(() -> anew(kind, within));
    }

    /** Letters, digits and hyphens, fit for the name of a file: "part-0190…", "part-new-0190…". */
    public String text() {
        String word = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return word + (isNew ? "-new" : "") + about.map(uid -> "-" + uid.text()).orElse("");
    }
}
