package thalweg.sheet.html;

import java.util.Locale;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.sheet.Inert;

/**
 * Draws a display list as SVG. Ink shows as the width and the breaking of a stroke; the page may add a colour to each
 * by its class. Labels keep their size whatever the scale of the drawing.
 */
public final class SvgDrawing {

    /** Where there is room, on paper or a wide screen; the page shrinks it again where there is not. */
    private static final double ENLARGED = 1.35;

    private static final double HEAD_LENGTH = 11;

    private static final double HEAD_HALF_WIDTH = 4.5;

    private final SvgFrame frame;
    private final StringBuilder svg = new StringBuilder();

    /** How the strokes look that are being drawn; empty text where none are. */
    private String stroke = "";

    private SvgDrawing(SvgFrame frame) {
        this.frame = frame;
    }

    /**
     * The drawing as one {@code svg} element that needs nothing else.
     *
     * @param id from which the ids inside are made, unique on the page
     * @param title a few words; the drawing's own description goes beside it
     */
    public static String write(Drawing drawing, String id, String title) {
        SvgDrawing writing = new SvgDrawing(SvgFrame.around(drawing));
        writing.open(id, title, drawing.description());
        drawing.shapes().forEach(writing::draw);
        writing.endStrokes();
        return writing.svg.append("</svg>").toString();
    }

    private void open(String id, String title, String description) {
        append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"%s-title %s-desc\"", id, id);
        append(" viewBox=\"%.1f %.1f %.1f %.1f\"", frame.left(), frame.top(), frame.width(), frame.height());
        append(" width=\"%.0f\" height=\"%.0f\"", frame.width() * ENLARGED, frame.height() * ENLARGED);
        append(" fill=\"none\" stroke-linejoin=\"round\" font-family=\"sans-serif\"");
        append(" font-size=\"%s\">\n", SvgFrame.LETTER_HEIGHT);
        append("<title id=\"%s-title\">%s</title>\n", id, escape(title));
        append("<desc id=\"%s-desc\">%s</desc>\n", id, escape(description));
    }

    private void draw(Shape shape) {
        Runnable drawing =
                shape.match(line -> () -> draw(line), polygon -> () -> draw(polygon), label -> () -> draw(label));
        drawing.run();
    }

    private void draw(Shape.Line line) {
        double x1 = frame.x(line.from());
        double y1 = frame.y(line.from());
        double x2 = frame.x(line.to());
        double y2 = frame.y(line.to());
        double length = Math.hypot(x2 - x1, y2 - y1);
        // A head longer than its shaft would point the wrong way.
        double head = line.arrow() ? Math.min(HEAD_LENGTH, length) : 0;
        double along = length == 0 ? 0 : 1 - head / length;
        stroke(line.ink(), line.dashed());
        append(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>\n",
                x1, y1, x1 + (x2 - x1) * along, y1 + (y2 - y1) * along);
        if (head > 0) {
            double backX = (x2 - x1) / length * head;
            double backY = (y2 - y1) / length * head;
            double halfWidth = HEAD_HALF_WIDTH / HEAD_LENGTH;
            append(
                    "<polygon points=\"%.1f,%.1f %.1f,%.1f %.1f,%.1f\" stroke=\"none\" fill=\"currentColor\"/>\n",
                    x2,
                    y2,
                    x2 - backX - backY * halfWidth,
                    y2 - backY + backX * halfWidth,
                    x2 - backX + backY * halfWidth,
                    y2 - backY - backX * halfWidth);
        }
    }

    private void draw(Shape.Polygon polygon) {
        StringBuilder points = new StringBuilder();
        for (Spot spot : polygon.spots()) {
            points.append(String.format(Locale.ROOT, "%.1f,%.1f ", frame.x(spot), frame.y(spot)));
        }
        if (polygon.filled()) {
            stroke(polygon.ink(), width(polygon.ink()), "");
        } else {
            stroke(polygon.ink(), false);
        }
        append(
                "<polygon points=\"%s\"%s/>\n",
                points.toString().strip(), polygon.filled() ? " fill=\"currentColor\"" : "");
    }

    /** The page may give the letters a halo by their class, for where a stroke passes under them. */
    private void draw(Shape.Label label) {
        endStrokes();
        String anchor = label.side().name().toLowerCase(Locale.ROOT);
        append(
                "<text class=\"label %s\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"currentColor\"%s>%s</text>\n",
                inkClass(label.ink()),
                frame.x(label.at()),
                frame.y(label.at()) + SvgFrame.LETTER_HEIGHT * 0.35,
                anchor,
                label.ink() == Ink.STRONG || label.ink() == Ink.CAUTION ? " font-weight=\"bold\"" : "",
                escape(Inert.line(label.text())));
    }

    private static String inkClass(Ink ink) {
        return "ink-" + ink.name().toLowerCase(Locale.ROOT);
    }

    private void stroke(Ink ink, boolean dashed) {
        String dashes = dashed ? "7 5" : ink == Ink.CAUTION ? "10 3 2 3" : ink == Ink.FAINT ? "1.5 3" : "";
        stroke(ink, width(ink), dashes);
    }

    /** What follows is drawn so; strokes of one look in a row stand in one group, which says it once. */
    private void stroke(Ink ink, String width, String dashes) {
        String look = "class=\"" + inkClass(ink) + "\" stroke=\"currentColor\" stroke-width=\"" + width + "\""
                + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
        if (!look.equals(stroke)) {
            endStrokes();
            append("<g %s>\n", look);
            stroke = look;
        }
    }

    private void endStrokes() {
        if (!stroke.isEmpty()) {
            append("</g>\n");
            stroke = "";
        }
    }

    private static String width(Ink ink) {
        return switch (ink) {
            case MAIN -> "1.6";
            case STRONG -> "3";
            case FAINT -> "0.8";
            case FORCE -> "2.4";
            case CAUTION -> "2";
        };
    }

    /** As a text or the value of an attribute. */
    static String escape(String text) {
        return Inert.of(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&#34;");
    }

    private void append(String format, Object... arguments) {
        svg.append(String.format(Locale.ROOT, format, arguments));
    }
}
