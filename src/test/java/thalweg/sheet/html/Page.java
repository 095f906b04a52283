package thalweg.sheet.html;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A rendered sheet, read by the XML parser of the platform: what is not well-formed is refused. */
record Page(Document document) {

    static Page of(String html) {
        try {
            return new Page(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(html))));
        } catch (SAXException | ParserConfigurationException | IOException e) {
            throw new AssertionError("not well-formed", e);
        }
    }

    List<Element> elements(String name) {
        NodeList found = document.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    Stream<Attr> attributes() {
        return elements("*").stream()
                .flatMap(element -> IntStream.range(0, element.getAttributes().getLength())
                        .mapToObj(i -> (Attr) element.getAttributes().item(i)));
    }

    List<String> values(String attribute) {
        return attributes()
                .filter(found -> found.getName().equals(attribute))
                .map(Attr::getValue)
                .toList();
    }

    /** Levels of the headings, in order. */
    List<Integer> headings() {
        return elements("*").stream()
                .map(Element::getTagName)
                .filter(name -> name.matches("h[1-6]"))
                .map(name -> name.charAt(1) - '0')
                .toList();
    }

    /** Every text outside the style sheet. */
    String text() {
        return elements("body").get(0).getTextContent();
    }
}
