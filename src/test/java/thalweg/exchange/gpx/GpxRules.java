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
 * Rules of the GPX 1.1 schema, written down beside the reader and not taken from it: the root, the order and number of
 * children, the attributes that are required and allowed, ranges and words of values, no text beside elements. All of it was
 * held against the text of the published schema; that text itself states no licence, so it does not stand here. What is
 * stricter: a time is in UTC, as the schema's documentation asks and its type does not.
 *
 * @see "GPX 1.1 Schema, http://www.topografix.com/GPX/1/1"
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

    private static final Map<String, List<String>> ORDER = Map.ofEntries(
            Map.entry("gpx", List.of("metadata", "wpt*", "rte*", "trk*", "extensions")),
            Map.entry(
                    "metadata",
                    List.of("name", "desc", "author", "copyright", "link*", "time", "keywords", "bounds", "extensions")),
            Map.entry("author", List.of("name", "email", "link")),
            Map.entry("email", List.of()),
            Map.entry("bounds", List.of()),
            Map.entry("copyright", List.of("year", "license")),
            Map.entry("link", List.of("text", "type")),
            Map.entry(
                    "rte", List.of("name", "cmt", "desc", "src", "link*", "number", "type", "extensions", "rtept*")),
            Map.entry(
                    "trk", List.of("name", "cmt", "desc", "src", "link*", "number", "type", "extensions", "trkseg*")),
            Map.entry("trkseg", List.of("trkpt*", "extensions")),
            Map.entry("wpt", POINT),
            Map.entry("rtept", POINT),
            Map.entry("trkpt", POINT));

    /** Attributes, all of them required; any other is not allowed. */
    private static final Map<String, List<String>> ATTRIBUTES = Map.ofEntries(
            Map.entry("gpx", List.of("version", "creator")),
            Map.entry("wpt", List.of("lat", "lon")),
            Map.entry("rtept", List.of("lat", "lon")),
            Map.entry("trkpt", List.of("lat", "lon")),
            Map.entry("link", List.of("href")),
            Map.entry("email", List.of("id", "domain")),
            Map.entry("copyright", List.of("author")),
            Map.entry("bounds", List.of("minlat", "minlon", "maxlat", "maxlon")));

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
        String own = element.getLocalName();
        attributes(element, own);
        if (!ORDER.containsKey(own)) {
            expect(element.getElementsByTagName("*").getLength() == 0, own + " holds a text alone");
            return;
        }
        List<String> order = ORDER.getOrDefault(own, List.of());
        if (order.equals(POINT)) {
            expect(inRange(element.getAttribute("lat"), -90, 90), "a latitude is from -90 to 90");
            expect(
                    inRange(element.getAttribute("lon"), -180, Math.nextDown(180.0)),
                    "a longitude is from -180 to below 180");
        }
        int at = 0;
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (!(node instanceof Element child)) {
                boolean isText = node.getNodeType() == Node.TEXT_NODE || node.getNodeType() == Node.CDATA_SECTION_NODE;
                expect(!isText || node.getTextContent().isBlank(), own + " holds no text of its own");
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

    private void attributes(Element element, String own) {
        List<String> required = ATTRIBUTES.getOrDefault(own, List.of());
        required.forEach(name -> expect(element.hasAttribute(name), own + " has " + name));
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Node attribute = element.getAttributes().item(i);
            boolean declares = attribute.getNodeName().startsWith("xmlns")
                    || "http://www.w3.org/2001/XMLSchema-instance".equals(attribute.getNamespaceURI());
            expect(
                    declares || required.contains(attribute.getNodeName()),
                    own + " has no attribute " + attribute.getNodeName());
        }
    }

    private void value(Element child, String name) {
        String text = child.getTextContent().strip();
        switch (name) {
            case "ele" -> expect(DECIMAL.matcher(text).matches(), "an elevation is a decimal number");
            case "time" -> expect(UTC.matcher(text).matches(), "a time is in UTC");
            case "magvar" -> expect(inRange(text, 0, Math.nextDown(360.0)), "a bearing is from 0 to below 360");
            case "geoidheight", "hdop", "vdop", "pdop", "ageofdgpsdata" ->
                expect(DECIMAL.matcher(text).matches(), name + " is a decimal number");
            case "sat", "number" -> expect(text.matches("\\+?[0-9]+|-0+"), name + " is a whole number from 0");
            case "dgpsid" ->
                expect(text.matches("[0-9]{1,4}") && Integer.parseInt(text) <= 1023, "a station is 0 to 1023");
            case "fix" -> expect(List.of("none", "2d", "3d", "dgps", "pps").contains(text), "a fix is one of five words");
            case "year" -> expect(text.matches("-?[0-9]{4,}(Z|[+-][0-9]{2}:[0-9]{2})?"), "a year has four digits");
            case "extensions" -> {
                // Anything of another namespace may stand in it.
                for (Node node = child.getFirstChild(); node != null; node = node.getNextSibling()) {
                    expect(!NAMESPACE.equals(node.getNamespaceURI()), "extensions are of another namespace");
                }
            }
            default -> element(child);
        }
    }

    private static boolean inRange(String text, double least, double most) {
        return DECIMAL.matcher(text).matches() && Double.parseDouble(text) >= least && Double.parseDouble(text) <= most;
    }
}
