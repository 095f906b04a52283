package thalweg.tui.core;

/** Another screen to go to. The screens there are, are declared beside them: screens do not know one another. */
public interface Destination {}
