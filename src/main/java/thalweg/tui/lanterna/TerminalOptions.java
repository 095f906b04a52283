package thalweg.tui.lanterna;

import java.util.Map;
import thalweg.settings.Theme;

/**
 * What is to be known of a terminal beforehand.
 *
 * @param mouse whether it reports the mouse, which takes the selecting of text from the terminal itself
 * @param theme how it is coloured; attributes are used in any case
 * @param remote whether its keys come over a network, where Esc and what belongs to it may come apart
 * @param insideTmux whether tmux stands between it and the person's own terminal
 */
public record TerminalOptions(boolean mouse, Theme theme, boolean remote, boolean insideTmux) {

    /**
     * What the environment tells, with the mouse on.
     *
     * @param environment variables by name
     * @see "no-color.org: any NO_COLOR that is not empty"
     */
    public static TerminalOptions of(Map<String, String> environment) {
        return new TerminalOptions(
                true,
                says(environment, "NO_COLOR") ? Theme.PLAIN : Theme.TERMINAL,
                says(environment, "SSH_CONNECTION") || says(environment, "SSH_TTY"),
                says(environment, "TMUX"));
    }

    private static boolean says(Map<String, String> environment, String name) {
        return !environment.getOrDefault(name, "").isEmpty();
    }

    /** The same, with the mouse left to the terminal. */
    public TerminalOptions withoutMouse() {
        return new TerminalOptions(false, theme, remote, insideTmux);
    }

    /** The same in other colours: what a person says goes before what the environment says. */
    public TerminalOptions themed(Theme other) {
        return new TerminalOptions(mouse, other, remote, insideTmux);
    }
}
