package thalweg.ledger;

/**
 * Places along a line as texts that sort: between any two there is room for another, so that nobody renumbers what
 * somebody else is editing.
 */
public final class OrderKey {

    /** In the order of their code points, so that plain text comparison sorts keys. */
    private static final String DIGITS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";

    private static final int BASE = DIGITS.length();

    /** Longer ones are refused when they are read. A line of 500 places fits, even if each is added at the same end. */
    private static final int LONGEST = 64;

    private OrderKey() {}

    /**
     * A key between two others.
     *
     * @param before the key it comes after; empty for the start of the line
     * @param after the key it comes before; empty for the end of the line
     */
    public static String between(String before, String after) {
        if (!isEndOrKey(before) || !isEndOrKey(after) || (!after.isEmpty() && before.compareTo(after) >= 0)) {
            throw new IllegalArgumentException("\"" + before + "\" is no key before \"" + after + "\"");
        }
        StringBuilder key = new StringBuilder();
        boolean below = after.isEmpty();
        for (int i = 0; ; i++) {
            int low = i < before.length() ? DIGITS.indexOf(before.charAt(i)) : 0;
            int high = below ? BASE : i < after.length() ? DIGITS.indexOf(after.charAt(i)) : 0;
            if (high - low > 1) {
                int step = below && i < before.length() ? 1 + (high - low - 1) / 8 : (high - low) / 2;
                return key.append(DIGITS.charAt(low + step)).toString();
            }
            key.append(DIGITS.charAt(low));
            below = below || high > low;
        }
    }

    /** Whether the text can be a key. */
    public static boolean isKey(String text) {
        return !text.isEmpty() && text.length() <= LONGEST && isEndOrKey(text);
    }

    /** A key that ends with the lowest digit would leave no room before it. */
    private static boolean isEndOrKey(String text) {
        return text.isEmpty()
                || (text.chars().allMatch(c -> DIGITS.indexOf(c) >= 0)
                        && text.charAt(text.length() - 1) != DIGITS.charAt(0));
    }
}
