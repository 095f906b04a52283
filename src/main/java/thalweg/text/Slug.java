package thalweg.text;

import java.util.regex.Pattern;

/** A name for a file that every system takes: small letters of any script, digits and single dashes, nothing else. */
public final class Slug {

    /** Length of a slug [characters], at most; leaves room for an ending in every file system's limit. */
    public static final int LONGEST = 60;

    private static final String NAMELESS = "unnamed";

    private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");

    /**
     * Names of devices, which Windows does not give to a file, whatever its ending.
     *
     * @see "Microsoft, Naming Files, Paths, and Namespaces: Naming Conventions"
     */
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

    private Slug() {}

    /**
     * The name as far as letters and digits tell it, and the whole id part after it, as two names may fold alike.
     *
     * @param name of the thing; what is neither letter nor digit is left out
     * @param idPart that tells two things of that name apart; may be empty
     * @return 1 to {@value #LONGEST} characters, no dash at either end
     */
    public static String of(String name, String idPart) {
        String id = cut(dashed(idPart), LONGEST);
        String words = cutAtWord(dashed(name), Math.max(0, LONGEST - id.length() - (id.isEmpty() ? 0 : 1)));
        String slug = words + (words.isEmpty() || id.isEmpty() ? "" : "-") + id;
        if (slug.isEmpty()) {
            return NAMELESS;
        }
        return DEVICE.matcher(slug).matches() ? slug + "-" + NAMELESS : slug;
    }

    private static String dashed(String text) {
        return trimmed(OTHER.matcher(Fold.fold(text)).replaceAll("-"));
    }

    private static String cut(String dashed, int longest) {
        if (dashed.length() <= longest) {
            return dashed;
        }
        boolean halves = longest > 0 && Character.isHighSurrogate(dashed.charAt(longest - 1));
        return trimmed(dashed.substring(0, halves ? longest - 1 : longest));
    }

    /** Half a word at the end is left out, unless it is the first. */
    private static String cutAtWord(String dashed, int longest) {
        boolean inWord = dashed.length() > longest && dashed.charAt(longest) != '-';
        String cut = cut(dashed, longest);
        int dash = cut.lastIndexOf('-');
        return inWord && dash > 0 && cut.length() == longest ? cut.substring(0, dash) : cut;
    }

    private static String trimmed(String dashed) {
        int from = dashed.startsWith("-") ? 1 : 0;
        int to = dashed.length() > from && dashed.endsWith("-") ? dashed.length() - 1 : dashed.length();
        return dashed.substring(from, to);
    }
}
