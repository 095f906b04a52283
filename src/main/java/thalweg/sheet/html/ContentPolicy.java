package thalweg.sheet.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * What a browser may do with a sheet: show it in its own style, and nothing else.
 *
 * @see "W3C, Content Security Policy Level 3"
 */
final class ContentPolicy {

    private ContentPolicy() {}

    /**
     * @param style the only style sheet that is let through, to the letter
     */
    static String allowing(String style) {
        return "default-src 'none'; style-src 'sha256-" + sha256(style) + "'; base-uri 'none'; form-action 'none'";
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }
}
