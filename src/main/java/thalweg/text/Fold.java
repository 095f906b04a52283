package thalweg.text;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Text as a search compares it: without accents, case and typographic finery, the same in every language setting.
 *
 * <p>Marks are dropped where people leave them out: from Latin, Greek and Cyrillic letters, points from Hebrew and
 * Arabic. Vowel signs of Indic scripts and Thai and the voicing of kana stay, as they make another word.
 */
public final class Fold {

    private static final int FIRST_VOICING = 0x3099;
    private static final int LAST_VOICING = 0x309A;
    private static final int KANA_LENGTHENER = 0x30FC;

    /**
     * Small letters that Unicode does not take apart, and quotes and dashes, as people without them on the keyboard write
     * them. Common practice, no standard: the letters are those of European languages written in Latin script.
     */
    private static final Map<Integer, String> PLAIN = Map.ofEntries(
            Map.entry((int) 'ß', "ss"),
            Map.entry((int) 'æ', "ae"),
            Map.entry((int) 'œ', "oe"),
            Map.entry((int) 'ø', "o"),
            Map.entry((int) 'đ', "d"),
            Map.entry((int) 'ð', "d"),
            Map.entry((int) 'þ', "th"),
            Map.entry((int) 'ł', "l"),
            Map.entry((int) 'ħ', "h"),
            Map.entry((int) 'ŧ', "t"),
            Map.entry((int) 'ŋ', "n"),
            Map.entry((int) 'ı', "i"),
            Map.entry((int) 'ĸ', "k"),
            Map.entry((int) 'ə', "e"),
            Map.entry((int) '’', "'"),
            Map.entry((int) '‘', "'"),
            Map.entry((int) 'ʼ', "'"),
            Map.entry((int) 'ʻ', "'"),
            Map.entry((int) '‐', "-"),
            Map.entry((int) '–', "-"),
            Map.entry((int) '—', "-"),
            Map.entry((int) '−', "-"),
            Map.entry((int) '⁄', "/"));

    private Fold() {}

    /** The text for comparing and sorting: white space of any length is one space, none at either end. */
    public static String fold(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFKD);
        StringBuilder out = new StringBuilder(apart.length());
        boolean gap = false;
        for (int i = 0; i < apart.length(); i += Character.charCount(apart.codePointAt(i))) {
            int codePoint = apart.codePointAt(i);
            if (Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)) {
                gap = true;
            } else if (!isDropped(codePoint)) {
                out.append(gap && out.length() > 0 ? " " : "").append(plain(codePoint));
                gap = false;
            }
        }
        return Normalizer.normalize(out, Normalizer.Form.NFC);
    }

    /**
     * The words of the text, folded, in order: runs of letters and digits. A run of Chinese, Japanese or Korean
     * characters, which are written without spaces, counts as its overlapping pairs, a single one as itself.
     *
     * @return what is asked for; may be empty, no word is
     */
    public static List<String> tokens(String text) {
        return tokens(text, false);
    }

    /**
     * The words by which the text is found: each word that is asked for begins one of them. They are the words of the
     * text and, after the pairs of a run, its last character by itself: the other characters begin a pair, and one alone
     * is to find the end of a run as well.
     */
    public static List<String> indexed(String text) {
        return tokens(text, true);
    }

    /** The letters and digits of the text, folded, with nothing between them: "EN 959" as "en959". */
    public static String joined(String text) {
        StringBuilder out = new StringBuilder();
        fold(text).codePoints().filter(c -> Kind.of(c) != Kind.GAP).forEach(out::appendCodePoint);
        return out.toString();
    }

    private static List<String> tokens(String text, boolean withEnds) {
        List<String> tokens = new ArrayList<>();
        String folded = fold(text);
        int at = 0;
        while (at < folded.length()) {
            Kind kind = Kind.at(folded, at);
            int end = at;
            while (end < folded.length()
                    && (Unwanted.isMark(folded.codePointAt(end)) || Kind.at(folded, end) == kind)) {
                end += Character.charCount(folded.codePointAt(end));
            }
            switch (kind) {
                case WORD -> tokens.add(folded.substring(at, end));
                case UNSPACED -> addPairs(folded.substring(at, end), withEnds, tokens);
                case GAP -> {}
            }
            at = end;
        }
        return List.copyOf(tokens);
    }

    private static boolean isDropped(int codePoint) {
        if (Unwanted.is(codePoint) || Unwanted.isJoiner(codePoint)) {
            return true;
        }
        if (!Unwanted.isMark(codePoint) || (codePoint >= FIRST_VOICING && codePoint <= LAST_VOICING)) {
            return false;
        }
        return switch (Character.UnicodeScript.of(codePoint)) {
            case INHERITED, LATIN, GREEK, CYRILLIC, HEBREW, ARABIC -> true;
            default -> false;
        };
    }

    /** Upper case first, as some letters have two lower cases: the sigma at the end of a word, the long s. */
    private static String plain(int codePoint) {
        int lower = Character.toLowerCase(Character.toUpperCase(codePoint));
        return PLAIN.getOrDefault(lower, Character.toString(lower));
    }

    private static void addPairs(String run, boolean withEnd, List<String> tokens) {
        int[] characters = run.codePoints().toArray();
        for (int i = 0; i + 1 < characters.length; i++) {
            tokens.add(new String(characters, i, 2));
        }
        if (withEnd || characters.length == 1) {
            tokens.add(new String(characters, characters.length - 1, 1));
        }
    }

    private enum Kind {
        WORD,
        UNSPACED,
        GAP;

        static Kind at(String text, int index) {
            return of(text.codePointAt(index));
        }

        static Kind of(int codePoint) {
            if (codePoint == KANA_LENGTHENER) {
                return UNSPACED;
            }
            if (!Character.isLetterOrDigit(codePoint)
                    && !Unwanted.isMark(codePoint)
                    && Character.getType(codePoint) != Character.LETTER_NUMBER) {
                return GAP;
            }
            return switch (Character.UnicodeScript.of(codePoint)) {
                case HAN, HIRAGANA, KATAKANA, HANGUL, BOPOMOFO -> UNSPACED;
                default -> WORD;
            };
        }
    }
}
