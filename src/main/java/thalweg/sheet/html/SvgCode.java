package thalweg.sheet.html;

import thalweg.qr.QrCode;

/** Draws a code as two paths: the light ground with its margin, and a stroke for each run of dark fields. */
final class SvgCode {

    /** Wide enough that a phone reads it from an arm's length off a page [px]. */
    private static final int EDGE = 120;

    private SvgCode() {}

    /**
     * The code as one {@code svg} element that needs nothing else.
     *
     * @param address in letters, digits and signs that need no escaping
     * @param caption what it leads to
     * @param id from which the ids inside are made, unique on the page
     */
    static String write(String address, String caption, String id) {
        QrCode code = QrCode.of(address);
        int edge = code.size() + 2 * QrCode.MARGIN;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"code\" role=\"img\" aria-labelledby=\"" + id
                + "-title " + id
                + "-desc\" viewBox=\"" + -QrCode.MARGIN + " " + -QrCode.MARGIN + " " + edge + " " + edge + "\" width=\""
                + EDGE + "\" height=\"" + EDGE + "\">\n<title id=\"" + id + "-title\">QR</title>\n<desc id=\"" + id
                + "-desc\">QR: " + SvgDrawing.escape(caption) + ", " + address + "</desc>\n<path fill=\"#fff\" d=\"M"
                + -QrCode.MARGIN + " " + -QrCode.MARGIN + "h"
                + edge + "v" + edge + "h-" + edge + "z\"/>\n<path stroke=\"#000\" d=\"" + strokes(code)
                + "\"/>\n</svg>";
    }

    /** Each stroke is one field high and lies in the middle of its row. */
    private static String strokes(QrCode code) {
        StringBuilder path = new StringBuilder();
        for (QrCode.Run run : code.runs()) {
            path.append('M')
                    .append(run.from())
                    .append(' ')
                    .append(run.row())
                    .append(".5h")
                    .append(run.length());
        }
        return path.toString();
    }
}
