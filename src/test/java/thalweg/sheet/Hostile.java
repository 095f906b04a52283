package thalweg.sheet;

/** Texts that try to be more than text, in every language a sheet is written in. */
public final class Hostile {

    private static final String BEFORE = "</style></title><script>alert(1)</script>\"'`&amp;]]>--> ";

    private static final String AFTER =
            " \u202Eesrever\u202C\u2066 \u001B[31m\u0000\u0007 ${7*7} <img src=x onerror=alert(1)>"
                    + " javascript:alert(1) 黄色い谷 e\u0301 \uD83E\uDDD7 \\22 ;}body{display:none} *bold* _it_\n== not a heading ==\n";

    private Hostile() {}

    /** The word amid markup, quotes, controls, reordering signs and wide letters, followed by one endless word. */
    public static String around(String word) {
        return BEFORE + word + AFTER + "n".repeat(200);
    }
}
