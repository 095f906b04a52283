package thalweg.tui.lanterna;

import com.googlecode.lanterna.TextCharacter;

/**
 * A character for Lanterna's screen whose width is what we say. Lanterna's own rule takes an e with an accent of its own
 * for a wide character and refuses a family of emoji.
 */
final class ClusterCharacter extends TextCharacter {

    private static final long serialVersionUID = 1;

    private final String cluster;
    private final boolean wide;

    /**
     * @param look a space that looks as the cluster is to look
     * @param cluster one grapheme cluster, or empty for the second cell of a wide one: that equals no visible character, so
     *     that whatever comes there is painted
     */
    // The only constructor that takes a look from elsewhere.
    @SuppressWarnings("deprecation")
    ClusterCharacter(TextCharacter look, String cluster, boolean wide) {
        super(look);
        this.cluster = cluster;
        this.wide = wide;
    }

    @Override
    public String getCharacterString() {
        return cluster;
    }

    @Override
    public boolean isDoubleWidth() {
        return wide;
    }

    @Override
    public boolean equals(Object other) {
        // The same cell is the same object as long as it is remembered; Lanterna compares every cell for every picture.
        return this == other
                || (super.equals(other) && other instanceof ClusterCharacter that && cluster.equals(that.cluster));
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + cluster.hashCode();
    }
}
