package thalweg.sheet.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.extend.TextRenderer;
import com.openhtmltopdf.render.AbstractOutputDevice;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** One picture of a sheet as it is painted, black on white. */
final class DrawnPicture implements SVGImage {

    /** A stroke to the right, as codes are made of. */
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+\\.5)h(\\d+)");

    private static final FSRGBColor WHITE = new FSRGBColor(255, 255, 255);

    private final Element svg;
    private final SvgBox box;
    private final int width;
    private final int height;
    private final double scale;
    private final List<String> families;

    /**
     * @param svg with its width and height [px]
     * @param dots of the output to a pixel
     * @param families of fonts for labels
     */
    DrawnPicture(Element svg, double dots, List<String> families) {
        this.svg = svg;
        this.box = SvgBox.of(svg);
        this.width = (int) Math.round(SvgBox.number(svg, "width", box.width()) * dots);
        this.height = (int) Math.round(SvgBox.number(svg, "height", box.height()) * dots);
        this.scale = width / box.width();
        this.families = families;
    }

    @Override
    public int getIntrinsicWidth() {
        return width;
    }

    @Override
    public int getIntrinsicHeight() {
        return height;
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
        Painting painting = new Painting(device, context, x - box.left() * scale, y - box.top() * scale);
        painting.paintIn(svg);
    }

    /** One act of painting, on a device that counts in dots. */
    private final class Painting {

        private final OutputDevice device;
        private final RenderingContext context;
        private final double originX;
        private final double originY;

        /**
         * @param originX where the canvas has its 0, in dots
         * @param originY where the canvas has its 0, in dots
         */
        Painting(OutputDevice device, RenderingContext context, double originX, double originY) {
            this.device = device;
            this.context = context;
            this.originX = originX;
            this.originY = originY;
        }

        /** What an element holds, one after the other. */
        void paintIn(Element element) {
            for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element inner) {
                    paint(inner);
                }
            }
        }

        private void paint(Element element) {
            device.setColor(FSRGBColor.BLACK);
            switch (element.getNodeName()) {
                case "g" -> paintIn(element);
                case "line" -> line(element);
                case "polygon" -> polygon(element);
                case "text" -> label(element);
                case "path" -> fields(element);
                default -> throw new AssertionError("a picture holds no " + element.getNodeName());
            }
        }

        private double x(double canvas) {
            return originX + canvas * scale;
        }

        private double y(double canvas) {
            return originY + canvas * scale;
        }

        private double number(Element element, String name) {
            return SvgBox.number(element, name, 0);
        }

        private void line(Element line) {
            stroke(line);
            device.draw(new Line2D.Double(
                    x(number(line, "x1")), y(number(line, "y1")), x(number(line, "x2")), y(number(line, "y2"))));
        }

        /** The dark fields of a code; its light ground is the paper. */
        private void fields(Element path) {
            if (!path.hasAttribute("stroke")) {
                return;
            }
            Path2D dark = new Path2D.Double();
            Matcher run = RUN.matcher(path.getAttribute("d"));
            while (run.find()) {
                double left = x(Double.parseDouble(run.group(1)));
                double middle = y(Double.parseDouble(run.group(2)));
                double length = Double.parseDouble(run.group(3)) * scale;
                dark.append(new Rectangle2D.Double(left, middle - scale / 2, length, scale), false);
            }
            device.fill(dark);
        }

        private void polygon(Element polygon) {
            Path2D path = new Path2D.Double();
            for (String corner : polygon.getAttribute("points").split(" ", -1)) {
                int comma = corner.indexOf(',');
                double cornerX = x(Double.parseDouble(corner.substring(0, comma)));
                double cornerY = y(Double.parseDouble(corner.substring(comma + 1)));
                if (path.getCurrentPoint() == null) {
                    path.moveTo(cornerX, cornerY);
                } else {
                    path.lineTo(cornerX, cornerY);
                }
            }
            path.closePath();
            if (polygon.hasAttribute("fill")) {
                device.fill(path);
            }
            if (!polygon.getAttribute("stroke").equals("none")) {
                stroke(polygon);
                device.draw(path);
            }
        }

        /** As the group has it in which the shape stands. */
        private void stroke(Element shape) {
            Element group = (Element) shape.getParentNode();
            float strokeWidth = (float) (SvgBox.number(group, "stroke-width", 1) * scale);
            String dashes = group.getAttribute("stroke-dasharray");
            if (dashes.isEmpty()) {
                device.setStroke(new BasicStroke(strokeWidth, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
                return;
            }
            String[] lengths = dashes.split(" ", -1);
            float[] dots = new float[lengths.length];
            for (int i = 0; i < dots.length; i++) {
                dots[i] = (float) (Double.parseDouble(lengths[i]) * scale);
            }
            device.setStroke(new BasicStroke(strokeWidth, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dots, 0));
        }

        /** The letters stand on a white ground, so that a stroke that passes under them does not cross them out. */
        private void label(Element label) {
            String text = label.getTextContent();
            FontSpecification wanted = font(label);
            FSFont font = context.getFont(wanted);
            TextRenderer letters = context.getTextRenderer();
            double textWidth = letters.getWidth(context.getFontContext(), font, text);
            double left = x(number(label, "x")) - textWidth * before(label.getAttribute("text-anchor"));
            double base = y(number(label, "y"));
            double size = font.getSize2D();
            device.setColor(WHITE);
            device.fill(new Rectangle2D.Double(left, base - 0.78 * size, textWidth, size));
            device.setColor(FSRGBColor.BLACK);
            device.setFont(font);
            if (device instanceof AbstractOutputDevice output) {
                // Else it thickens the letters to the weight of the last text on the page.
                output.setFontSpecification(wanted);
            }
            letters.drawString(device, text, (float) left, (float) base);
        }

        private double before(String anchor) {
            return switch (anchor) {
                case "middle" -> 0.5;
                case "end" -> 1;
                default -> 0;
            };
        }

        private FontSpecification font(Element label) {
            FontSpecification wanted = new FontSpecification();
            wanted.families = families.toArray(new String[0]);
            wanted.size = (float) (SvgBox.number(svg, "font-size", 14) * scale);
            wanted.fontWeight = label.getAttribute("font-weight").equals("bold") ? IdentValue.BOLD : IdentValue.NORMAL;
            wanted.fontStyle = IdentValue.NORMAL;
            wanted.variant = IdentValue.NORMAL;
            return wanted;
        }
    }
}
