package thalweg.sheet.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import thalweg.service.LoadPhrases;
import thalweg.sheet.Block;
import thalweg.sheet.Paper;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;
import thalweg.sheet.html.HtmlSheet;

/** The codes of a sheet, read again from what is drawn by the decoder of the library, as a phone would. */
final class CodesReadTest {

    private static final Pattern SVG = Pattern.compile("(?s)<svg[^>]*class=\"code\"[^>]*viewBox=\"([^\"]+)\".*?</svg>");
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)\\.5h(\\d+)");
    private static final int PIXELS = 6;

    private static List<String> addresses(Sheet sheet) {
        List<String> addresses = new ArrayList<>();
        for (Section section : sheet.sections()) {
            for (Block block : section.blocks()) {
                if (block instanceof Block.Code code) {
                    addresses.add(code.address());
                }
            }
        }
        return addresses;
    }

    private static List<String> read(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
        try {
            return Arrays.stream(new QRCodeMultiReader()
                            .decodeMultiple(bitmap, Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE)))
                    .map(Result::getText)
                    .toList();
        } catch (NotFoundException e) {
            return List.of();
        }
    }

    @Test
    void aCameraReadsTheCodesOfAPrintedPage() throws IOException {
        Sheet sheet = SampleSheets.full();
        byte[] file = PdfSheet.render(sheet, Paper.A4, List.of(), LoadPhrases.english());
        TreeSet<String> read = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                read.addAll(read(renderer.renderImageWithDPI(page, 200)));
            }
        }

        assertThat(addresses(sheet)).isNotEmpty();
        assertThat(read).containsExactlyElementsOf(new TreeSet<>(addresses(sheet)));
    }

    @Test
    void aCameraReadsTheCodesOfAScreen() {
        Sheet sheet = SampleSheets.full();
        List<String> read = new ArrayList<>();
        Matcher svg = SVG.matcher(HtmlSheet.render(sheet));
        while (svg.find()) {
            read.addAll(read(drawn(svg.group(), svg.group(1).split(" ", -1))));
        }

        assertThat(read).containsExactlyElementsOf(addresses(sheet));
    }

    /** The ground as far as the view box reaches, and each stroke one field high, as SVG 2 says of strokes and fills. */
    private static BufferedImage drawn(String svg, String[] box) {
        int edge = Integer.parseInt(box[2]) * PIXELS;
        BufferedImage image = new BufferedImage(edge, edge, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        canvas.setColor(Color.WHITE);
        canvas.fillRect(0, 0, edge, edge);
        canvas.setTransform(new AffineTransform(
                PIXELS, 0, 0, PIXELS, -Double.parseDouble(box[0]) * PIXELS, -Double.parseDouble(box[1]) * PIXELS));
        canvas.setColor(Color.BLACK);
        Matcher run = RUN.matcher(svg);
        while (run.find()) {
            int left = Integer.parseInt(run.group(1));
            int top = Integer.parseInt(run.group(2));
            int right = left + Integer.parseInt(run.group(3));
            Path2D field = new Path2D.Double();
            field.moveTo(left, top);
            field.lineTo(right, top);
            field.lineTo(right, top + 1.0);
            field.lineTo(left, top + 1.0);
            field.closePath();
            canvas.fill(field);
        }
        canvas.dispose();
        return image;
    }
}
