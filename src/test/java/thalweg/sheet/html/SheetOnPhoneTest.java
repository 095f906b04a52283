package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.sheet.Hostile;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Sheet;

/** Opens sheets with Chromium as wide as a small phone. */
class SheetOnPhoneTest {

    /** A frame stands for the phone, because a browser window is never that narrow. */
    private static final String PHONE = """
            <!DOCTYPE html>
            <html><body>
            <iframe id="phone" src="sheet.html" style="width:360px;height:640px;border:0"></iframe>
            <p id="told"></p>
            <script>
            document.getElementById('phone').onload = function () {
              const sheet = this.contentDocument.documentElement;
              document.getElementById('told').textContent = 'needs ' + sheet.scrollWidth + ' of ' + sheet.clientWidth;
            };
            </script>
            </body></html>
            """;

    private static final Pattern TOLD = Pattern.compile("needs (\\d+) of (\\d+)");

    @TempDir
    Path folder;

    static Stream<Sheet> sheets() {
        return Stream.of(
                SampleSheets.full(),
                SampleSheets.bare(),
                new RandomCanyon(7, Hostile::around).sheet(),
                new RandomCanyon(9, word -> word + "W".repeat(400)).sheet());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void nothingIsWiderThanThePhone(Sheet sheet) throws IOException, InterruptedException {
        Tools tools = new Tools(folder);
        tools.page("sheet.html", HtmlSheet.render(sheet));

        Matcher told = TOLD.matcher(tools.open(tools.page("phone.html", PHONE)));

        assertThat(told.find()).isTrue();
        assertThat(Integer.parseInt(told.group(2))).isBetween(300, 360);
        assertThat(told.group(1)).isEqualTo(told.group(2));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void theBrowserFindsNothingToRefuse(Sheet sheet) throws IOException, InterruptedException {
        Tools tools = new Tools(folder);

        assertThat(tools.complaints(tools.page("sheet.html", HtmlSheet.render(sheet))))
                .isEmpty();
    }

    @Test
    void thePolicyRefusesWhateverWouldStillGetIn() throws IOException, InterruptedException {
        Tools tools = new Tools(folder);
        String invaded = HtmlSheet.render(SampleSheets.bare())
                .replace("</main>", "<script>document.title = 'ran'</script><p style=\"color:red\">x</p></main>");

        assertThat(tools.complaints(tools.page("sheet.html", invaded))).hasSize(2);
    }
}
