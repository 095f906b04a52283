package thalweg.sheet.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import thalweg.service.LoadPhrases;
import thalweg.sheet.Paper;
import thalweg.sheet.SampleSheets;

class FoldedPagesTest {

    private static byte[] pocket() {
        return PdfSheet.render(SampleSheets.pocket(), Paper.POCKET, List.of(), LoadPhrases.english());
    }

    private static final Pattern NUMBER = Pattern.compile("(\\d+) / \\d+");

    /** Where the number of each small page stands on the first side, with the turn of its letters. */
    private static List<String> numbers(byte[] pdf) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    letters.add(letter);
                }
            };
            stripper.setEndPage(1);
            stripper.getText(document);
        }
        String text = letters.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
        assertThat(text).as("a letter a position").hasSize(letters.size());
        return NUMBER.matcher(text)
                .results()
                .map(number -> number.group(1) + " " + place(letters.get(number.start())))
                .toList();
    }

    /** The middle of A4 is at 297.6 and 420.9 points. */
    private static String place(TextPosition letter) {
        Matrix matrix = letter.getTextMatrix();
        return (matrix.getTranslateY() < 420.9 ? "lower" : "upper")
                + (matrix.getTranslateX() < 297.6 ? " left" : " right")
                + (matrix.getScaleX() > 0 ? "" : " upside down");
    }

    @Test
    void fourPagesLieWhereTheFoldedPaperHasThem() throws IOException {
        assertThat(numbers(pocket()))
                .containsExactlyInAnyOrder(
                        "1 lower right", "2 upper right upside down", "3 upper left upside down", "4 lower left");
    }

    @Test
    void everySideIsA4() throws IOException {
        try (PDDocument document = Loader.loadPDF(pocket())) {
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isCloseTo(595.3f, within(1f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(841.9f, within(1f));
                assertThat(page.getAnnotations()).isEmpty();
            }
        }
    }

    /** The way from an element to its content and the way back lead to the same place. */
    @Test
    void theStructureFollowsItsContent() throws IOException {
        try (PDDocument document = Loader.loadPDF(pocket())) {
            PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
            Map<Integer, COSArray> parents = parents(root);
            List<COSDictionary> pieces = new ArrayList<>();
            IdentityHashMap<COSDictionary, COSDictionary> elements = new IdentityHashMap<>();
            collect(root.getCOSObject(), pieces, elements);

            assertThat(pieces).hasSizeGreaterThan(100);
            assertThat(pieces).allSatisfy(piece -> {
                COSDictionary form = piece.getCOSDictionary(COSName.getPDFName("Stm"));
                COSArray ways = Objects.requireNonNull(parents.get(form.getInt(COSName.STRUCT_PARENTS)));
                assertThat(ways.getObject(piece.getInt(COSName.MCID))).isSameAs(elements.get(piece));
            });
        }
    }

    private static Map<Integer, COSArray> parents(PDStructureTreeRoot root) {
        COSArray pairs = root.getParentTree().getCOSObject().getCOSArray(COSName.NUMS);
        Map<Integer, COSArray> parents = new HashMap<>();
        for (int i = 0; i + 1 < pairs.size(); i += 2) {
            if (pairs.getObject(i + 1) instanceof COSArray ways) {
                parents.put(pairs.getInt(i), ways);
            }
        }
        return parents;
    }

    /** Pieces of content below an element, each with its element; a bare number of a piece is an error. */
    private static void collect(
            COSDictionary element, List<COSDictionary> pieces, IdentityHashMap<COSDictionary, COSDictionary> elements) {
        COSBase kids = element.getDictionaryObject(COSName.K);
        List<COSBase> all = kids instanceof COSArray several
                ? IntStream.range(0, several.size())
                        .mapToObj(several::getObject)
                        .toList()
                : kids == null ? List.of() : List.of(kids);
        for (COSBase kid : all) {
            assertThat(kid).isInstanceOf(COSDictionary.class);
            COSDictionary below = (COSDictionary) kid;
            if (below.containsKey(COSName.MCID)) {
                pieces.add(below);
                elements.put(below, element);
            } else {
                collect(below, pieces, elements);
            }
        }
    }
}
