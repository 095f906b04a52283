package thalweg.settings;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A figure that the plan of a trip goes by. No published figure is known for any of them: they are our choice or from memory,
 * unconfirmed, to be replaced by your own in the settings or in the file of a trip.
 */
public enum TripFigure {
    /** To rig a drop [min]. */
    RIG_MIN("rig_min", 8, 0, 600),
    /** For one person at a drop besides the way down: clip in, check, clear the rope [min]. */
    PERSON_MIN("person_min", 3, 0, 600),
    /** On the rope [m/min]. */
    DOWN_M_PER_MIN("down_m_per_min", 10, 0.5, 600),
    /** To pull and coil the ropes [min]. */
    PULL_MIN("pull_min", 4, 0, 600),
    /** For one person at a jump, slide, downclimb, handline or short swim [min]. */
    PASS_MIN("pass_min", 1.5, 0, 600),
    /** Along the line between the places [m/min]. */
    WALK_M_PER_MIN("walk_m_per_min", 20, 0.5, 600),
    /** Of all of them from one day to the next, as the standard deviation of the logarithm [-]. */
    SPREAD("spread", 0.25, 0, 1),
    /** By which a beginner takes longer than others for everything of their own [-]. From memory, unconfirmed. */
    BEGINNER_FACTOR("beginner_factor", 1.5, 1, 5),
    /** Under way until the group rests, at the next place; 0 for never [min]. Our choice. */
    BREAK_EVERY_MIN("break_every_min", 120, 0, 600),
    /** How long it rests [min]. Our choice. */
    BREAK_MIN("break_min", 10, 0, 240),
    /** Before sunset, by which the group is to be back: between walls it is dark earlier [min]. Our choice. */
    LIGHT_RESERVE_MIN("light_reserve_min", 60, 0, 600),
    /** Of webbing for a part that is replaced, where no rig says it [m]. From memory, unconfirmed. */
    WEBBING_M("webbing_m", 6, 0.5, 60),
    /** Of cord for a part that is replaced, where no rig says it [m]. From memory, unconfirmed. */
    CORD_M("cord_m", 6, 0.5, 60),
    /** Of webbing over what is counted [m]. Our choice. */
    RESERVE_WEBBING_M("reserve_webbing_m", 6, 0, 200),
    /** Of cord over what is counted [m]. Our choice. */
    RESERVE_CORD_M("reserve_cord_m", 3, 0, 200),
    /** Links over those that are counted, a whole number. Our choice. */
    RESERVE_LINKS("reserve_links", 2, 0, 50);

    private final String word;
    private final double standard;
    private final double least;
    private final double most;

    TripFigure(String word, double standard, double least, double most) {
        this.word = word;
        this.standard = standard;
        this.least = least;
        this.most = most;
    }

    /** As it stands in files. */
    public String word() {
        return word;
    }

    /** What holds where nothing is set, in its unit. */
    public double standard() {
        return standard;
    }

    /** The least that is believed, in its unit. */
    public double least() {
        return least;
    }

    /** The most that is believed, in its unit. */
    public double most() {
        return most;
    }

    /** Whether that is believed of it. */
    public boolean believes(double value) {
        return value >= least && value <= most && (this != RESERVE_LINKS || value == Math.rint(value));
    }

    /** The figure of that word. */
    public static Optional<TripFigure> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
    }

    /** Every word there is, for a message. */
    public static String words() {
        return Arrays.stream(values()).map(TripFigure::word).collect(Collectors.joining(", "));
    }
}
