package thalweg.sheet.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The page of a sheet as a tree, made ready to be laid out on paper. */
final class PaperPage {

    /** A code on paper is 25 mm wide: each field is above 0.7 mm. */
    private static final String CODE_PIXELS = "96";

    private final Document document;

    private PaperPage(Document document) {
        this.document = document;
    }

    /**
     * The tree of a page.
     *
     * @param page well-formed, made by this program
     * @param setting what its texts pass through
     * @param widest the widest a drawing may be [px]
     */
    static PaperPage of(String page, Setting setting, double widest) {
        PaperPage ready = new PaperPage(parsed(page));
        ready.each("figure", figure -> {
            if (figure.getAttribute("class").equals("narrow")) {
                figure.getParentNode().removeChild(figure);
            }
        });
        ready.each("svg", drawing -> describe(drawing, widest));
        ready.texts(ready.document.getDocumentElement(), setting);
        ready.each("svg", drawing -> drawing.setAttribute("alt", setting.of(drawing.getAttribute("alt"))));
        // A link is read out by its title.
        ready.each("a", link -> link.setAttribute("title", link.getTextContent()));
        return ready;
    }

    /** Puts the style in. */
    void style(String css) {
        each("style", style -> style.setTextContent(css));
    }

    /** Makes of the sections a list that a reader of documents shows beside the pages. */
    void outline() {
        each("head", head -> {
            Element list = document.createElement("bookmarks");
            head.appendChild(list);
            each("main", main -> outline(main, list));
        });
    }

    private void outline(Node within, Element list) {
        for (Node section : children(within, node -> node.getNodeName().equals("section"))) {
            Element entry = document.createElement("bookmark");
            entry.setAttribute("href", "#" + ((Element) section).getAttribute("id"));
            children(section, node -> node.getNodeName().matches("h[2-4]"))
                    .forEach(heading -> entry.setAttribute("name", heading.getTextContent()));
            list.appendChild(entry);
            outline(section, entry);
        }
    }

    /** Leaves of each link what it says. */
    void unlink() {
        each("a", link -> {
            document.renameNode(link, null, "span");
            link.removeAttribute("href");
            link.removeAttribute("title");
        });
    }

    Document document() {
        return document;
    }

    private static Document parsed(String page) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            DocumentBuilder builder = factory.newDocumentBuilder();
            return builder.parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException | SAXException e) {
            throw new AssertionError("a page is well-formed", e);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot be read", e);
        }
    }

    /** Acts on a copy of what is there, so that it may be taken out. */
    private void each(String tag, Consumer<Element> act) {
        List<Element> found = new ArrayList<>();
        var nodes = document.getElementsByTagName(tag);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        found.forEach(act);
    }

    /** What a drawing says in words goes where the reader of a document looks for it. */
    private static void describe(Element drawing, double widest) {
        StringBuilder said = new StringBuilder();
        for (Node child : children(drawing, node -> node.getNodeName().equals("desc") || isTitle(node))) {
            if (!isTitle(child)) {
                said.append(child.getTextContent());
            }
            drawing.removeChild(child);
        }
        drawing.setAttribute("alt", said.toString());
        if (drawing.getAttribute("class").equals("code")) {
            drawing.setAttribute("width", CODE_PIXELS);
            drawing.setAttribute("height", CODE_PIXELS);
            return;
        }
        SvgBox box = SvgBox.of(drawing);
        double scale = Math.min(1, widest / box.width());
        drawing.setAttribute("width", Double.toString(box.width() * scale));
        drawing.setAttribute("height", Double.toString(box.height() * scale));
    }

    private static boolean isTitle(Node node) {
        return node.getNodeName().equals("title");
    }

    private static List<Node> children(Node parent, Predicate<Node> wanted) {
        List<Node> found = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (wanted.test(child)) {
                found.add(child);
            }
        }
        return found;
    }

    private void texts(Node node, Setting setting) {
        if (node instanceof Text text) {
            text.setData(setting.of(text.getData()));
        }
        for (Node child : children(node, any -> true)) {
            texts(child, setting);
        }
    }
}
