package thalweg.settings;

import java.util.Arrays;
import java.util.Optional;

/**
 * After how long a part is due, in months. Only the first is a rule that others state too; the rest are our choices, for
 * no standard gives figures for anchors that stay in a canyon.
 */
public enum DueFigure {
    /** Examination at least once in 12 months: common practice after EN 365, which asks it of personal equipment. */
    EXAMINED("examined", 12),
    /** By the sea: bolts can lose most of their strength within years (UIAA, corrosion notice); the figure is our choice. */
    MARINE("marine", 6),
    /** In the water; our choice. */
    WET("wet", 9),
    /** Last found worn; our choice. */
    WORN("worn", 6),
    /** Last found doubtful, or with entries that disagree; our choice. */
    DOUBTFUL("doubtful", 1),
    /**
     * Until textile that stays outdoors is to be replaced: as long as the published outdoor exposure test went (WSTDA, 1997
     * to 2004), in which nylon had lost 50 to 60 % by its end.
     */
    TEXTILE("textile", 36);

    /** The longest that may be set [months]. */
    public static final int MOST = 240;

    private final String word;
    private final int standard;

    DueFigure(String word, int standard) {
        this.word = word;
        this.standard = standard;
    }

    /** As it stands in the settings. */
    public String word() {
        return word;
    }

    /** What holds where nothing is set [months]. */
    public int standard() {
        return standard;
    }

    /** The figure of that word. */
    static Optional<DueFigure> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
    }
}
