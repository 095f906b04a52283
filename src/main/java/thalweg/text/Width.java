package thalweg.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many terminal cells a text takes, counted by what a person sees as one character (a grapheme cluster).
 *
 * <p>A cluster takes 0, 1 or 2 cells: the sum over its characters, 2 at most. Terminals do not all agree on rare
 * signs; this is what the wide characters of Unicode 15.0.0 and the categories of the JDK say.
 *
 * @see "Unicode Standard Annex 11, East Asian Width"
 * @see "Unicode Standard Annex 29, 3 Grapheme Cluster Boundaries"
 */
public final class Width {

    private static final Pattern CLUSTER = Pattern.compile("\\X");

    private static final int AS_PICTURE = 0xFE0F;

    /** Terminals know nothing of breaking words and paint it. */
    static final int SOFT_HYPHEN = 0xAD;

    private static final String ELLIPSIS = "…";

    private Width() {}

    /** The text's cells [-], 0 or more; control characters and line feeds take none. */
    public static int of(String text) {
        if (isPlain(text)) {
            return text.length();
        }
        int cells = 0;
        for (String cluster : clusters(text)) {
            cells += ofCluster(cluster);
        }
        return cells;
    }

    /** The characters as a person sees them, in order; together they are the text. Empty for the empty text. */
    public static List<String> clusters(String text) {
        List<String> clusters = new ArrayList<>(text.length());
        if (isPlain(text)) {
            for (int i = 0; i < text.length(); i++) {
                clusters.add(text.substring(i, i + 1));
            }
        } else {
            Matcher matcher = CLUSTER.matcher(text);
            while (matcher.find()) {
                clusters.add(matcher.group());
            }
        }
        return List.copyOf(clusters);
    }

    /**
     * The text if it fits, otherwise its beginning with an ellipsis.
     *
     * @param cells that may be taken [-]; below 1 nothing is left
     * @return a text of at most that many cells
     */
    public static String cut(String text, int cells) {
        if (of(text) <= Math.max(0, cells)) {
            return text;
        }
        if (cells < 1) {
            return "";
        }
        if (isPlain(text)) {
            return text.substring(0, cells - 1) + ELLIPSIS;
        }
        StringBuilder out = new StringBuilder();
        int taken = 0;
        for (String cluster : clusters(text)) {
            taken += ofCluster(cluster);
            if (taken > cells - 1) {
                break;
            }
            out.append(cluster);
        }
        return out.append(ELLIPSIS).toString();
    }

    /**
     * The text with spaces after it up to that many cells; a text that is as wide or wider stays as it is.
     *
     * @param cells to fill [-]
     */
    public static String pad(String text, int cells) {
        return text + " ".repeat(Math.max(0, cells - of(text)));
    }

    /**
     * The text in lines, broken at spaces and line feeds; the spaces at a break go. A word that is longer than a line is
     * broken between clusters.
     *
     * @param cells of a line [-]; less than 1 counts as 1
     * @return one line or more, none wider than that, but for a wide character where a line has one cell: it is kept
     */
    public static List<String> wrap(String text, int cells) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            lines.addAll(Wrap.paragraph(paragraph, Math.max(1, cells)));
        }
        return List.copyOf(lines);
    }

    /** Cells of one cluster [-]: 0, 1 or 2. */
    static int ofCluster(String cluster) {
        int cells = 0;
        int before = 0;
        for (int i = 0; i < cluster.length(); i += Character.charCount(before)) {
            int codePoint = cluster.codePointAt(i);
            boolean picture = codePoint == AS_PICTURE && CellTable.pictureWhenAsked(before);
            cells += picture ? 1 : ofCharacter(codePoint);
            before = codePoint;
        }
        return Math.min(2, cells);
    }

    private static int ofCharacter(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.SURROGATE,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> 0;
            case Character.FORMAT -> codePoint == SOFT_HYPHEN || Unwanted.isVisibleFormat(codePoint) ? 1 : 0;
            default -> isJoiningJamo(codePoint) ? 0 : CellTable.wide(codePoint) ? 2 : 1;
        };
    }

    /** Vowels and final consonants that melt into the Hangul syllable before them, which is wide already. */
    private static boolean isJoiningJamo(int codePoint) {
        return (codePoint >= 0x1160 && codePoint <= 0x11FF) || (codePoint >= 0xD7B0 && codePoint <= 0xD7FF);
    }

    /** Whether every character takes one cell and is a cluster by itself: most texts are, and need no tables. */
    public static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isPlain(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** Latin, Greek and Cyrillic letters without combining marks, dashes and quotes, boxes and blocks, braille. */
    private static boolean isPlain(char c) {
        return (c >= ' ' && c <= '~')
                || (c >= 0xA0 && c <= 0x2FF)
                || (c >= 0x370 && c <= 0x482)
                || (c >= 0x2010 && c <= 0x2027)
                || (c >= 0x2500 && c <= 0x259F)
                || (c >= 0x2800 && c <= 0x28FF);
    }
}
