package thalweg.exchange.gpx;

import java.io.StringReader;
import java.util.Optional;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.text.Clean;

/**
 * Walks down the elements of an XML text, one at a time. A document type or an entity of its own ends the walk with a
 * finding before anything is expanded or fetched, and so does nesting without end.
 */
final class Elements {

    /** The format needs 5 levels and extensions a few more. */
    private static final int DEEPEST = 64;

    /** Much more than any text of a waypoint that is kept; what is beyond is not even collected. */
    private static final int LONGEST_TEXT = 100_000;

    /** Why the walk ended, when that is among the findings already. */
    static final class Ended extends XMLStreamException {
        private static final long serialVersionUID = 1L;
    }

    private final XMLStreamReader reader;
    private final Findings findings;
    private int depth;
    private int line = 1;
    private String home = "";

    Elements(String text, Findings findings) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing is fetched");
        });
        this.reader = factory.createXMLStreamReader(new StringReader(text));
        this.findings = findings;
    }

    /** Goes to the outermost element, whose namespace then counts as the file's own. */
    void root() throws XMLStreamException {
        while (next() != XMLStreamConstants.START_ELEMENT) {
            // Comments and instructions may stand before it.
        }
        line = reader.getLocation().getLineNumber();
        home = namespace();
    }

    /** Reads on to the end, so that what stands after the last element is looked at too. */
    void finish() throws XMLStreamException {
        while (reader.hasNext()) {
            next();
        }
    }

    /** Goes to the next child of the element around; false at its end. A child that was entered must be read to its end. */
    boolean child() throws XMLStreamException {
        while (true) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                return true;
            }
            if (event == XMLStreamConstants.END_ELEMENT) {
                return false;
            }
        }
    }

    /** Leaves the element with all that is in it. */
    void skip() throws XMLStreamException {
        int outside = depth - 1;
        while (depth > outside) {
            next();
        }
    }

    /** The text directly in the element, which is left. */
    String text() throws XMLStreamException {
        StringBuilder out = new StringBuilder();
        int inside = depth;
        while (depth >= inside) {
            int event = next();
            boolean says = event == XMLStreamConstants.CHARACTERS
                    || event == XMLStreamConstants.CDATA
                    || event == XMLStreamConstants.SPACE;
            if (says && depth == inside && out.length() < LONGEST_TEXT) {
                out.append(reader.getText());
            }
        }
        return out.toString();
    }

    private int next() throws XMLStreamException {
        int before = reader.getLocation().getLineNumber();
        int event = reader.next();
        switch (event) {
            case XMLStreamConstants.START_ELEMENT -> {
                line = before;
                depth++;
                if (depth > DEEPEST) {
                    throw ended(Sentence.of("elements stand inside each other more than {0} deep.", DEEPEST));
                }
            }
            case XMLStreamConstants.END_ELEMENT -> depth--;
            case XMLStreamConstants.DTD ->
                throw ended(Sentence.of(
                        "there is a document type (<!DOCTYPE ...>), which may name other files; take it out and"
                                + " try again."));
            case XMLStreamConstants.ENTITY_REFERENCE ->
                throw ended(Sentence.of(
                        "there is the entity &{0}; which XML does not know; write the character itself.",
                        Clean.line(reader.getLocalName(), 40)));
            default -> {
                // Comments and instructions say nothing about places.
            }
        }
        return event;
    }

    private Ended ended(Sentence what) {
        findings.add("", reader.getLocation().getLineNumber(), what);
        return new Ended();
    }

    /** The line on which the element begins. */
    int line() {
        return line;
    }

    /** The name of the element, without its prefix. */
    String name() {
        return reader.getLocalName();
    }

    /** Whether the element is of the format and not something that a program added in a namespace of its own. */
    boolean isOwn() {
        return namespace().equals(home);
    }

    private String namespace() {
        return Optional.ofNullable(reader.getNamespaceURI()).orElse("");
    }

    /** An attribute of the element. */
    Optional<String> attribute(String name) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String namespace =
                    Optional.ofNullable(reader.getAttributeNamespace(i)).orElse("");
            if (reader.getAttributeLocalName(i).equals(name) && (namespace.isEmpty() || namespace.equals(home))) {
                return Optional.of(reader.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    /** A finding for what is no XML; whether the text simply ends too early can be told from where. */
    static void note(XMLStreamException failure, String text, Findings findings) {
        Location at = failure.getLocation();
        if (failure instanceof Ended) {
            return;
        }
        boolean early =
                at != null && at.getCharacterOffset() >= text.stripTrailing().length();
        int line = at == null ? 0 : Math.max(1, at.getLineNumber());
        findings.add(
                "",
                line,
                early
                        ? Sentence.of("the file ends in the middle; it was cut off on its way, fetch it again.")
                        : Sentence.of("this is no XML from here on; save the file again in the program that it is"
                                + " from."));
    }
}
