package thalweg.ledger;

import java.nio.ByteBuffer;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * The name by which every database knows a record.
 *
 * @param value version 7 for things (made where they were entered), version 8 for facts (cut from their hash)
 * @see "RFC 9562, Universally Unique IDentifiers"
 */
public record Uid(UUID value) implements Comparable<Uid> {

    private static final Pattern SHAPE =
            Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");

    /**
     * A new name for a thing.
     *
     * @param millis since 1970, UTC [ms], 0 or more
     * @param chance 128 random bits, of which 74 are used
     */
    public static Uid minted(long millis, UUID chance) {
        long high = (millis << 16) | 0x7000L | (chance.getMostSignificantBits() & 0x0FFFL);
        long low = (chance.getLeastSignificantBits() & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
        return new Uid(new UUID(high, low));
    }

    /** The name of a fact, cut from its hash: the same fact has the same name everywhere. */
    public static Uid of(Hash hash) {
        ByteBuffer bytes = ByteBuffer.wrap(hash.bytes());
        long high = (bytes.getLong() & 0xFFFFFFFFFFFF0FFFL) | 0x8000L;
        long low = (bytes.getLong() & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
        return new Uid(new UUID(high, low));
    }

    /** The name written in that text, if it is one. */
    public static Optional<Uid> parse(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        return SHAPE.matcher(lower).matches() ? Optional.of(new Uid(UUID.fromString(lower))) : Optional.empty();
    }

    /** A name that was stored as its 16 bytes. */
    public static Uid ofBytes(byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        return new Uid(new UUID(buffer.getLong(), buffer.getLong()));
    }

    /** Its 16 bytes. */
    public byte[] bytes() {
        return ByteBuffer.allocate(16)
                .putLong(value.getMostSignificantBits())
                .putLong(value.getLeastSignificantBits())
                .array();
    }

    /** As text, 36 characters in lower case. */
    public String text() {
        return value.toString();
    }

    /** Its last eight digits: enough to tell records apart on a screen. */
    public String tail() {
        String text = text();
        return text.substring(text.length() - 8);
    }

    @Override
    public int compareTo(Uid other) {
        return text().compareTo(other.text());
    }
}
