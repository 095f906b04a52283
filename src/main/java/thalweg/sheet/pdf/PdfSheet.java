package thalweg.sheet.pdf;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import thalweg.fault.InputException;
import thalweg.sheet.Paper;
import thalweg.sheet.Sheet;
import thalweg.sheet.html.HtmlSheet;
import thalweg.text.Phrases;

/**
 * Renders a sheet as one PDF that can be searched, copied from and read aloud: its text is text, and its structure is
 * told.
 *
 * @see "ISO 14289-1, Electronic document file format enhancement for accessibility (PDF/UA-1)"
 */
public final class PdfSheet {

    /** Between the edges of the paper and what stands on it, both sides together, as in the styles [mm]. */
    private static final double MARGINS = 28;

    private static final double PIXELS_PER_MILLIMETRE = 96 / 25.4;

    private static final String WITHOUT_WINDOWS = "java.awt.headless";

    private PdfSheet() {}

    /**
     * The whole file.
     *
     * @param own fonts that a person put in place for what those of the program lack, in the order in which they are asked
     * @param phrases for what is said about characters that no font has
     * @throws InputException when one of those fonts cannot be used
     */
    public static byte[] render(Sheet sheet, Paper paper, List<FontFile> own, Phrases phrases) {
        // Shapes are computed and nothing is shown: no window is asked for, also where there could be one.
        if (System.getProperty(WITHOUT_WINDOWS) == null) {
            System.setProperty(WITHOUT_WINDOWS, "true");
        }
        // What it would tell the developer of a page, it would tell the person at the terminal.
        XRLog.setLoggingEnabled(false);
        try (PDDocument document = new PDDocument()) {
            Typefaces faces = Typefaces.in(document, own);
            PdfRendererBuilder builder = new PdfRendererBuilder()
                    .usePDDocument(document)
                    .useUriResolver((base, address) -> null)
                    .useSVGDrawer(new PictureDrawer(faces.families()))
                    .useUnicodeLineBreaker(new LineBreaks())
                    .usePdfUaAccessibility(true)
                    .withProducer("Thalweg")
                    .withW3cDocument(page(sheet, paper, faces, phrases).document(), null);
            faces.offerTo(builder);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
            }
            if (paper == Paper.POCKET) {
                FoldedPages.fold(document);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory cannot be written", e);
        }
    }

    private static PaperPage page(Sheet sheet, Paper paper, Typefaces faces, Phrases phrases) {
        double widest = (paper.widthMillimetres() - MARGINS) * PIXELS_PER_MILLIMETRE;
        Setting setting = new Setting(faces::has);
        PaperPage page = PaperPage.of(HtmlSheet.unstyled(sheet), setting, widest);
        if (!setting.missing().isEmpty()) {
            Sheet whole = UnsetPart.added(sheet, setting.missing(), phrases);
            page = PaperPage.of(HtmlSheet.unstyled(whole), new Setting(faces::has), widest);
        }
        if (paper == Paper.POCKET) {
            page.unlink();
        } else {
            page.outline();
        }
        page.style(PaperStyle.of(paper, faces.familyList(), setting.of(sheet.footer())));
        return page;
    }
}
