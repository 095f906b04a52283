package thalweg.sheet.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/** The fonts of one document: those of the program, then those that a person put in place, asked in this order. */
final class Typefaces {

    private static final String OURS = "sheet";

    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    /**
     * One font of the document.
     *
     * @param family by which the page asks for it
     * @param weight as in style sheets
     * @param font for the document
     * @param letters that it has
     */
    private record Face(String family, int weight, PDType0Font font, CmapLookup letters) {}

    private final PDDocument document;
    private final List<Face> faces = new ArrayList<>();

    private Typefaces(PDDocument document) {
        this.document = document;
    }

    /**
     * The fonts, made part of a document that has to stay open as long as they are used.
     *
     * @param own that a person put in place, in the order in which they are asked
     * @throws InputException when one of those cannot be used
     */
    static Typefaces in(PDDocument document, List<FontFile> own) {
        Typefaces faces = new Typefaces(document);
        try {
            faces.add(OURS, REGULAR, ours("DejaVuSans.ttf"));
            faces.add(OURS, BOLD, ours("DejaVuSans-Bold.ttf"));
        } catch (IOException e) {
            throw new UncheckedIOException("a font of the program cannot be read", e);
        }
        for (FontFile file : own) {
            try {
                faces.add("own-" + faces.faces.size(), REGULAR, file.bytes());
            } catch (IOException | RuntimeException e) {
                // A broken file fails in as many ways as there are places in it.
                throw new InputException(
                        Sentence.of(
                                "The font {0} cannot be used: it is no TrueType font, or does not allow to be put into a"
                                        + " document; take it out of the folder.",
                                file.name()),
                        e);
            }
        }
        return faces;
    }

    private static byte[] ours(String name) throws IOException {
        try (InputStream in = Typefaces.class.getResourceAsStream("/thalweg/paper/" + name)) {
            return Objects.requireNonNull(in, "the program comes with its fonts")
                    .readAllBytes();
        }
    }

    private void add(String family, int weight, byte[] bytes) throws IOException {
        TrueTypeFont read = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
        document.registerTrueTypeFontForClosing(read);
        // Joined letters would come out of the document as one sign that no search finds.
        read.setEnableGsub(false);
        faces.add(new Face(family, weight, PDType0Font.load(document, read, true), read.getUnicodeCmapLookup()));
    }

    /** Whether every weight of one of the families has that code point. */
    boolean has(int point) {
        boolean ours = faces.stream()
                .filter(face -> face.family().equals(OURS))
                .allMatch(face -> face.letters().getGlyphId(point) != 0);
        return ours
                || faces.stream()
                        .filter(face -> !face.family().equals(OURS))
                        .anyMatch(face -> face.letters().getGlyphId(point) != 0);
    }

    /** The families in the order in which a style sheet names them. */
    List<String> families() {
        return faces.stream().map(Face::family).distinct().toList();
    }

    /** The families as a style sheet writes them. */
    String familyList() {
        return families().stream().map(family -> "'" + family + "'").collect(Collectors.joining(", "));
    }

    /** Makes them known to what lays the pages out. */
    void offerTo(PdfRendererBuilder builder) {
        for (Face face : faces) {
            builder.useFont(new PDFontSupplier(face.font()), face.family(), face.weight(), FontStyle.NORMAL, true);
        }
    }
}
