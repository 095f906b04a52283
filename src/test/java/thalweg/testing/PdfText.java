package thalweg.testing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads the text of a PDF back: as it stands on its pages, and as its structure has it read aloud. */
public final class PdfText {

    private PdfText() {}

    /** Every page. */
    public static List<String> pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return pages;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Everything, without the spaces and line ends by which a text is broken on paper. */
    public static String unbroken(byte[] pdf) {
        return unbroken(String.join("", pages(pdf)));
    }

    /** The text without spaces and line ends. */
    public static String unbroken(String text) {
        return text.replaceAll("[\\s\\u00A0]+", "");
    }

    /** One line an element that holds text or stands for something else, indented, in the order of reading. */
    public static List<String> structure(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<PDPage, Map<Integer, String>> contents = new HashMap<>();
            for (PDPage page : document.getPages()) {
                PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                Map<Integer, String> texts = new HashMap<>();
                extractor.getMarkedContents().forEach(content -> collect(content, texts));
                contents.put(page, texts);
            }
            List<String> lines = new ArrayList<>();
            walk(document.getDocumentCatalog().getStructureTreeRoot(), "", contents, lines);
            return lines;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void collect(PDMarkedContent content, Map<Integer, String> texts) {
        StringBuilder text = new StringBuilder();
        for (Object item : content.getContents()) {
            if (item instanceof TextPosition position) {
                text.append(position.getUnicode());
            } else if (item instanceof PDMarkedContent inner) {
                collect(inner, texts);
            }
        }
        texts.merge(content.getMCID(), text.toString(), String::concat);
    }

    private static void walk(
            PDStructureNode node, String indent, Map<PDPage, Map<Integer, String>> contents, List<String> lines) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                List<Object> kids = element.getKids();
                String text = kids.stream()
                        .map(one -> text(one, element, contents))
                        .collect(Collectors.joining(" "))
                        .replaceAll("\\s+", " ")
                        .strip();
                String alternate = element.getAlternateDescription();
                boolean figure = "Figure".equals(element.getStructureType());
                lines.add((indent
                                + element.getStructureType()
                                + (figure ? " [" + alternate + "]" : "")
                                + (text.isEmpty() || figure ? "" : " " + text))
                        .stripTrailing());
                walk(element, indent + " ", contents, lines);
            }
        }
    }

    private static String text(Object kid, PDStructureElement element, Map<PDPage, Map<Integer, String>> contents) {
        if (kid instanceof Integer number) {
            return contents.getOrDefault(element.getPage(), Map.of()).getOrDefault(number, "");
        }
        if (kid instanceof PDMarkedContentReference reference) {
            return contents.getOrDefault(reference.getPage(), Map.of()).getOrDefault(reference.getMCID(), "");
        }
        return "";
    }
}
