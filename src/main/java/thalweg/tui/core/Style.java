package thalweg.tui.core;

/** What a piece of text is, from which a terminal makes colours and attributes. Nothing is told by style alone. */
public enum Style {
    NORMAL,
    TITLE,
    STRONG,
    FAINT,
    SELECTED,
    FIELD,
    FOCUS,
    KEY,
    NOTICE,
    ERROR,
    CAUTION,
    GOOD,
    MIND,
    BAD
}
