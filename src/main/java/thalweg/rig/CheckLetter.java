package thalweg.rig;

import thalweg.fault.Sentence;

/**
 * The letters of the checklist by which the trade judges a multi-point anchor.
 *
 * <p>Equalised, Angle, Redundant, No Extension, Solid, Timely: a common term of the trade, without a single source.
 */
public enum CheckLetter {
    E("Equalised"),
    A("Angle"),
    R("Redundant"),
    NE("No Extension"),
    S("Solid"),
    T("Timely");

    private final String title;

    CheckLetter(String title) {
        this.title = title;
    }

    /** The word that it stands for, as it is said. */
    public Sentence called() {
        return Sentence.word(title);
    }

    /** The word that it stands for. */
    public String title() {
        return title;
    }
}
