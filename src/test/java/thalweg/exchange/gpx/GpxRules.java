package thalweg.exchange.gpx;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Rules of the GPX 1.1 schema, written down beside the reader and not taken from it: the root and its attributes, the
 * order and number of children, ranges of coordinates, UTC times. The order inside {@code wpt} and the ranges were seen in
 * the schema; the order inside {@code gpx}, {@code rte}, {@code trk} and {@code metadata} is from memory of it.
 */
final class GpxRules {

    private static final String NAMESPACE = "http://www.topografix.com/GPX/1/1";

    private static final List<String> POINT = List.of(
            "ele",
            "time",
            "magvar",
            "geoidheight",
            "name",
            "cmt",
            "desc",
            "src",
            "link*",
            "sym",
            "type",
            "fix",
            "sat",
            "hdop",
            "vdop",
            "pdop",
            "ageofdgpsdata",
            "dgpsid",
            "extensions");

    private static final Map<String, List<String>> ORDER = Map.of(
            "gpx", List.of("metadata", "wpt*", "rte*", "trk*", "extensions"),
            "metadata",
                    List.of("name", "desc", "author", "copyright", "link*", "time", "keywords", "bounds", "extensions"),
            "rte", List.of("name", "cmt", "desc", "src", "link*", "number", "type", "extensions", "rtept*"),
            "trk", List.of("name", "cmt", "desc", "src", "link*", "number", "type", "extensions", "trkseg*"),
            "trkseg", List.of("trkpt*", "extensions"),
            "wpt", POINT,
            "rtept", POINT,
            "trkpt", POINT);

    private static final Pattern UTC = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)");

    private final List<String> breaches = new ArrayList<>();

    private GpxRules() {}

    /** What the file breaks; empty for a valid one. */
    static List<String> breaches(byte[] bytes) {
        GpxRules rules = new GpxRules();
        Element root;
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            root = factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(bytes))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
        rules.expect(NAMESPACE.equals(root.getNamespaceURI()), "the namespace is that of GPX 1.1");
        rules.expect("gpx".equals(root.getLocalName()), "the root is gpx");
        rules.expect("1.1".equals(root.getAttribute("version")), "the version is 1.1");
        rules.expect(!root.getAttribute("creator").isEmpty(), "there is a creator");
        rules.element(root);
        return rules.breaches;
    }

    private void expect(boolean holds, String rule) {
        if (!holds) {
            breaches.add(rule);
        }
    }

    private void element(Element element) {
        List<String> order = ORDER.getOrDefault(element.getLocalName(), List.of());
        if (order.equals(POINT)) {
            expect(inRange(element.getAttribute("lat"), -90, 90), "a latitude is from -90 to 90");
            expect(
                    inRange(element.getAttribute("lon"), -180, Math.nextDown(180.0)),
                    "a longitude is from -180 to below 180");
        }
        int at = 0;
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (!(node instanceof Element child) || order.isEmpty()) {
                continue;
            }
            String name = NAMESPACE.equals(child.getNamespaceURI()) ? child.getLocalName() : "(foreign)";
            while (at < order.size() && !order.get(at).replace("*", "").equals(name)) {
                at++;
            }
            expect(at < order.size(), name + " has its place in " + element.getLocalName());
            if (at < order.size() && !order.get(at).endsWith("*")) {
                at++;
            }
            value(child, name);
        }
    }

    private void value(Element child, String name) {
        String text = child.getTextContent().strip();
        switch (name) {
            case "ele" -> expect(DECIMAL.matcher(text).matches(), "an elevation is a decimal number");
            case "time" -> expect(UTC.matcher(text).matches(), "a time is in UTC");
            case "extensions" -> {
                // Anything may stand in it.
            }
            default -> element(child);
        }
    }

    private static boolean inRange(String text, double least, double most) {
        return DECIMAL.matcher(text).matches() && Double.parseDouble(text) >= least && Double.parseDouble(text) <= most;
    }
}
