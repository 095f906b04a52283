package thalweg.sheet.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.io.InputStream;
import java.util.List;
import org.w3c.dom.Element;

/** Draws the pictures of a sheet, which consist of strokes, outlines and labels and of nothing else. */
final class PictureDrawer implements SVGDrawer {

    private final List<String> families;

    /**
     * @param families of fonts for labels, in the order in which they are asked
     */
    PictureDrawer(List<String> families) {
        this.families = List.copyOf(families);
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {}

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        return new DrawnPicture(svg, dotsPerPixel, families);
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

    @Override
    public void addFontStream(FSSupplier<InputStream> supplier, String family, Integer weight, FontStyle style) {}

    @Override
    public void close() {}
}
