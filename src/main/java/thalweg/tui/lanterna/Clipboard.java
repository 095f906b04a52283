package thalweg.tui.lanterna;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/**
 * Asks a terminal to put a text on its clipboard.
 *
 * @see "XTerm Control Sequences: OSC 52"
 */
final class Clipboard {

    /** Many terminals take no longer sequence than 100,000 bytes, with what stands around the text (from memory). */
    static final int LONGEST = 74_994;

    private static final String ESCAPE = "\033";

    private Clipboard() {}

    /**
     * The bytes to send, or empty when the text is longer than {@value #LONGEST} bytes.
     *
     * @param insideTmux tmux keeps the sequence for itself or drops it, as it is set; wrapped, it may pass it on. Both are
     *     sent, because each works where the other is switched off
     */
    static Optional<String> sequence(String text, boolean insideTmux) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > LONGEST) {
            return Optional.empty();
        }
        String plain = ESCAPE + "]52;c;" + Base64.getEncoder().encodeToString(bytes) + "\007";
        String wrapped = ESCAPE + "Ptmux;" + plain.replace(ESCAPE, ESCAPE + ESCAPE) + ESCAPE + "\\";
        return Optional.of(insideTmux ? plain + wrapped : plain);
    }
}
