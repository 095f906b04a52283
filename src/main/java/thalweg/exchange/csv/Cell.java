package thalweg.exchange.csv;

/** One cell of a table that a spreadsheet may open. */
final class Cell {

    /** Signs with which spreadsheets take a cell for a formula; the last four are the wide forms of the first. */
    private static final String FORMULA = "=+-@|%\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private Cell() {}

    /**
     * The text with an apostrophe before it where a spreadsheet could take it for a formula. Common practice against
     * cells that run something when a file is opened; a program that reads the file takes the apostrophe away again.
     */
    static String guarded(String text) {
        String seen = text.stripLeading();
        boolean formula = !seen.isEmpty() && FORMULA.indexOf(seen.charAt(0)) >= 0;
        boolean broken = !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
        return formula || broken ? "'" + text : text;
    }
}
