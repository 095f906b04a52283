package thalweg.tui.lanterna;

import java.util.Map;

/**
 * What is to be known of a terminal beforehand.
 *
 * @param mouse whether it reports the mouse, which takes the selecting of text from the terminal itself
 * @param colour whether colours may be used; attributes may in any case
 * @param remote whether its keys come over a network, where Esc and what belongs to it may come apart
 * @param insideTmux whether tmux stands between it and the person's own terminal
 */
public record TerminalOptions(boolean mouse, boolean colour, boolean remote, boolean insideTmux) {

    /**
     * What the environment tells, with the mouse on.
     *
     * @param environment variables by name
     * @see "no-color.org: any NO_COLOR that is not empty"
     */
    public static TerminalOptions of(Map<String, String> environment) {
        return new TerminalOptions(
                true,
                !says(environment, "NO_COLOR"),
                says(environment, "SSH_CONNECTION") || says(environment, "SSH_TTY"),
                says(environment, "TMUX"));
    }

    private static boolean says(Map<String, String> environment, String name) {
        return !environment.getOrDefault(name, "").isEmpty();
    }

    /** The same, with the mouse left to the terminal. */
    public TerminalOptions withoutMouse() {
        return new TerminalOptions(false, colour, remote, insideTmux);
    }

    /** The same without colours. */
    public TerminalOptions withoutColour() {
        return new TerminalOptions(mouse, false, remote, insideTmux);
    }
}
