package thalweg.sheet.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import thalweg.sheet.Paper;
import thalweg.sheet.html.CssText;

/** The style sheet of a sheet on paper. */
final class PaperStyle {

    private PaperStyle() {}

    /**
     * The style for that paper.
     *
     * @param families of fonts, as a style sheet writes them
     * @param footer at the foot of every page, one line
     */
    static String of(Paper paper, String families, String footer) {
        String size = String.format(Locale.ROOT, "%.1fmm %.1fmm", paper.widthMillimetres(), paper.heightMillimetres());
        return (file(paper == Paper.POCKET ? "pocket.css" : "page.css") + file("sheet.css"))
                .replace("%size%", size)
                .replace("%families%", families)
                .replace("%footer%", CssText.quoted(footer));
    }

    private static String file(String name) {
        try (InputStream in = PaperStyle.class.getResourceAsStream("/thalweg/paper/" + name)) {
            return new String(
                    Objects.requireNonNull(in, "the program comes with its styles")
                            .readAllBytes(),
                    StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("a style of the program cannot be read", e);
        }
    }
}
