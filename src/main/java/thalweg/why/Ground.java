package thalweg.why;

import java.util.Locale;
import thalweg.text.Phrases;

/**
 * Something that was put in and on which a figure rests.
 *
 * @param kind what it is
 * @param value as a person reads it
 * @param standing how sure it is that somebody meant it
 */
public record Ground(Kind kind, String value, Standing standing) {

    /** As "sway to either side: 0° (default)". */
    String print(Phrases phrases) {
        String said = phrases.say("why.ground", phrases.say(kind.key()), value);
        return phrases.say(standing.key(), said);
    }

    /** Where a ground is from. */
    public enum Standing {
        /** Somebody said so. */
        STATED,
        /** The rig began with it, and nobody has changed or confirmed it. */
        START,
        /** It was not stated, and the program's default stands in. */
        DEFAULT,
        /** Nobody knows it. */
        UNKNOWN;

        /** Under which the phrases keep what is said of it. */
        String key() {
            return "why.standing." + name().toLowerCase(Locale.ROOT);
        }
    }

    /** What can be put in, in the order in which it is told. */
    public enum Kind {
        LOAD(""),
        AIM(""),
        SWAY("sway_deg"),
        LEAN("lean_out_deg"),
        REDIRECT(""),
        PLACES(""),
        SLINGS("sling_EA_kN"),
        LAYOUT(""),
        FOCUS(""),
        STIFFNESS(""),
        STRANDS("strands"),
        SLACK(""),
        CAPTURED("captured"),
        FRICTION("friction"),
        LIMITS(""),
        SLIDER("slider_strands"),
        ROPE("rope_out_m"),
        STRENGTHS(""),
        STRAND_STRENGTH(""),
        KNOT(""),
        SPREADS("spread"),
        LOAD_SPREAD("load_spread");

        private final String rigKey;

        Kind(String rigKey) {
            this.rigKey = rigKey;
        }

        /** The key of the rig file that may be left out; empty text where it has no default. */
        public String rigKey() {
            return rigKey;
        }

        /** Under which the phrases keep its name. */
        String key() {
            return "why.ground." + name().toLowerCase(Locale.ROOT);
        }
    }
}
