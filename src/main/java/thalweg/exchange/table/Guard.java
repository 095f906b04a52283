package thalweg.exchange.table;

/**
 * The apostrophe before a cell that a spreadsheet could take for a formula. Common practice against cells that run
 * something when a file is opened; what was guarded comes back unchanged.
 */
public final class Guard {

    /** Signs with which spreadsheets take a cell for a formula; the last four are the wide forms of the first. */
    private static final String FORMULA = "=+-@|%\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private static final char MARK = '\'';

    private Guard() {}

    /** The text with an apostrophe before it where a spreadsheet could take it for a formula, or for one with a guard. */
    public static String put(String text) {
        return isRisky(text) ? MARK + text : text;
    }

    /** The text without the apostrophe that was put before it; one that belongs to the text stays. */
    public static String taken(String cell) {
        return cell.length() > 1 && cell.charAt(0) == MARK && isRisky(cell.substring(1)) ? cell.substring(1) : cell;
    }

    private static boolean isRisky(String text) {
        int from = 0;
        while (from < text.length() && text.charAt(from) == MARK) {
            from++;
        }
        String bare = text.substring(from);
        String seen = bare.stripLeading();
        return (!seen.isEmpty() && FORMULA.indexOf(seen.charAt(0)) >= 0)
                || (!bare.isEmpty() && FORMULA.indexOf(bare.charAt(0)) >= 0);
    }
}
