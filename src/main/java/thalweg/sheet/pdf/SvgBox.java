package thalweg.sheet.pdf;

import org.w3c.dom.Element;

/**
 * The canvas of a drawing.
 *
 * @param left edge
 * @param top edge
 * @param width above 0
 * @param height above 0
 */
record SvgBox(double left, double top, double width, double height) {

    /** The canvas that an {@code svg} element of this program states. */
    static SvgBox of(Element svg) {
        String[] edges = svg.getAttribute("viewBox").split(" ", -1);
        return new SvgBox(number(edges[0]), number(edges[1]), number(edges[2]), number(edges[3]));
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    /** The number under that name, or another where there is none. */
    static double number(Element element, String name, double otherwise) {
        String text = element.getAttribute(name);
        return text.isEmpty() ? otherwise : number(text);
    }
}
