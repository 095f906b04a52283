package thalweg.sheet.html;

import gg.jte.Content;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** The templates of the sheet, which were turned into classes when the program was built. */
final class Templates {

    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Templates.class.getClassLoader(), "thalweg.sheet.html.templates");

    private Templates() {}

    /** What the template makes of its parameters, to be put into another. */
    static Content of(String template, Map<String, Object> parameters) {
        return output -> ENGINE.render(template, parameters, output);
    }

    /** What the template makes of its parameters. */
    static String text(String template, Map<String, Object> parameters) {
        StringOutput output = new StringOutput();
        ENGINE.render(template, parameters, output);
        return output.toString();
    }

    /** One after another. */
    static Content together(List<Content> contents) {
        return output -> contents.forEach(content -> content.writeTo(output));
    }

    /** Markup that was made here and is already escaped. */
    static Content asIs(String markup) {
        return output -> output.writeContent(markup);
    }
}
