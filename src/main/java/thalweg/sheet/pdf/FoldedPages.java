package thalweg.sheet.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Puts four small pages on one side of a larger one. Its upper half is folded back behind the lower one and the left half
 * back behind the right one: the first page lies in front at the lower right, the second and the third inside, upside
 * down above, the fourth at the back. The structure of the document follows its content to where that is now.
 */
final class FoldedPages {

    private static final int TO_A_SIDE = 4;

    /** Length of the marks at the edges where it is folded [pt]. */
    private static final float MARK = 8;

    private static final COSName STREAM = COSName.getPDFName("Stm");
    private static final COSName CONTENT = COSName.getPDFName("MCR");
    private static final COSName ELEMENT_KIDS = COSName.K;

    /**
     * Where a small page is now.
     *
     * @param side the larger page
     * @param form its content
     */
    private record Moved(PDPage side, PDFormXObject form) {}

    private final PDDocument document;
    private final IdentityHashMap<COSDictionary, Moved> moved = new IdentityHashMap<>();

    private FoldedPages(PDDocument document) {
        this.document = document;
    }

    /** Rearranges all pages of a document, which have one size and no links. */
    static void fold(PDDocument document) throws IOException {
        new FoldedPages(document).fold();
    }

    private void fold() throws IOException {
        List<PDPage> small = new ArrayList<>();
        document.getPages().forEach(small::add);
        List<PDPage> sides = new ArrayList<>();
        for (int first = 0; first < small.size(); first += TO_A_SIDE) {
            sides.add(side(small.subList(first, Math.min(small.size(), first + TO_A_SIDE))));
        }
        small.forEach(document.getPages()::remove);
        sides.forEach(document::addPage);
        PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
        if (root != null) {
            follow(root.getCOSObject());
        }
    }

    private PDPage side(List<PDPage> pages) throws IOException {
        float width = pages.get(0).getMediaBox().getWidth();
        float height = pages.get(0).getMediaBox().getHeight();
        PDPage side = new PDPage(new PDRectangle(2 * width, 2 * height));
        side.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        try (PDPageContentStream content = new PDPageContentStream(document, side)) {
            content.beginMarkedContent(COSName.ARTIFACT);
            marks(content, width, height);
            content.endMarkedContent();
            for (int i = 0; i < pages.size(); i++) {
                PDFormXObject form = form(pages.get(i));
                moved.put(pages.get(i).getCOSObject(), new Moved(side, form));
                content.saveGraphicsState();
                content.transform(new Matrix(place(i, width, height)));
                content.drawForm(form);
                content.restoreGraphicsState();
            }
        }
        return side;
    }

    /** Where the page of that number goes, counted from 0. */
    private static AffineTransform place(int number, float width, float height) {
        return switch (number) {
            case 0 -> AffineTransform.getTranslateInstance(width, 0);
            case 1 -> upsideDown(2 * width, 2 * height);
            case 2 -> upsideDown(width, 2 * height);
            default -> new AffineTransform();
        };
    }

    /** Turned round, with its lower left corner where the upper right one shall be. */
    private static AffineTransform upsideDown(float right, float top) {
        return new AffineTransform(-1, 0, 0, -1, right, top);
    }

    private static void marks(PDPageContentStream content, float width, float height) throws IOException {
        content.setLineWidth(0.5f);
        stroke(content, width, 0, width, MARK);
        stroke(content, width, 2 * height - MARK, width, 2 * height);
        stroke(content, 0, height, MARK, height);
        stroke(content, 2 * width - MARK, height, 2 * width, height);
    }

    private static void stroke(PDPageContentStream content, float x1, float y1, float x2, float y2) throws IOException {
        content.moveTo(x1, y1);
        content.lineTo(x2, y2);
        content.stroke();
    }

    private PDFormXObject form(PDPage page) throws IOException {
        try (InputStream content = page.getContents()) {
            PDFormXObject form = new PDFormXObject(new PDStream(document, content, COSName.FLATE_DECODE));
            form.setResources(page.getResources());
            form.setBBox(page.getMediaBox());
            form.setStructParents(page.getStructParents());
            return form;
        }
    }

    /** Tells the elements below this one where their content is. */
    private void follow(COSDictionary element) {
        Moved here = moved.get(element.getCOSDictionary(COSName.PG));
        COSBase kids = element.getDictionaryObject(ELEMENT_KIDS);
        if (kids instanceof COSArray several) {
            for (int i = 0; i < several.size(); i++) {
                several.set(i, followed(several.get(i), here));
            }
        } else if (kids != null) {
            element.setItem(ELEMENT_KIDS, followed(kids, here));
        }
        if (here != null) {
            element.setItem(COSName.PG, here.side());
        }
    }

    /** One kid: the number of a piece of content on the page of its element, such a piece with its page, or an element. */
    private COSBase followed(COSBase kid, @Nullable Moved here) {
        COSBase plain = kid instanceof COSObject object ? object.getObject() : kid;
        if (plain instanceof COSInteger number && here != null) {
            COSDictionary piece = new COSDictionary();
            piece.setItem(COSName.TYPE, CONTENT);
            piece.setItem(COSName.MCID, number);
            place(piece, here);
            return piece;
        }
        if (plain instanceof COSDictionary dictionary) {
            Moved other = moved.get(dictionary.getCOSDictionary(COSName.PG));
            if (CONTENT.equals(dictionary.getCOSName(COSName.TYPE)) && other != null) {
                place(dictionary, other);
            } else {
                follow(dictionary);
            }
        }
        return kid;
    }

    private static void place(COSDictionary piece, Moved moved) {
        piece.setItem(COSName.PG, moved.side());
        piece.setItem(STREAM, moved.form());
    }
}
