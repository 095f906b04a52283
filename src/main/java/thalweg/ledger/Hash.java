package thalweg.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The SHA-256 of a canonical text.
 *
 * @param hex 64 hexadecimal digits in lower case
 */
public record Hash(String hex) implements Comparable<Hash> {

    private static final Pattern SHAPE = Pattern.compile("[0-9a-f]{64}");

    public Hash {
        if (!SHAPE.matcher(hex).matches()) {
            throw new IllegalArgumentException("a hash has 64 hexadecimal digits");
        }
    }

    /** The hash of that text's UTF-8 bytes. */
    public static Hash of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new Hash(HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    /** The hash written in that text, if it is one. */
    public static Optional<Hash> parse(String text) {
        return SHAPE.matcher(text).matches() ? Optional.of(new Hash(text)) : Optional.empty();
    }

    /** A hash that was stored as its 32 bytes. */
    public static Hash ofBytes(byte[] bytes) {
        return new Hash(HexFormat.of().formatHex(bytes));
    }

    /** Its 32 bytes. */
    public byte[] bytes() {
        return HexFormat.of().parseHex(hex);
    }

    @Override
    public int compareTo(Hash other) {
        return hex.compareTo(other.hex);
    }
}
