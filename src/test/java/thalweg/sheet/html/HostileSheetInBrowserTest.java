package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.markdown.MarkdownSheet;
import thalweg.testing.Browser;

/**
 * Records in which every text tries to become more than text, opened in a browser: nothing runs, nothing is fetched, no
 * policy has to step in, and every word is there to be read.
 */
final class HostileSheetInBrowserTest {

    /** What a script would leave behind. */
    private static final String MARK = "window.ran=1";

    /** Each of them stands around a word of its own, in every text of a canyon in turn. */
    private static final List<String> ATTACKS = List.of(
            "<script>" + MARK + ";alert(1)</script>",
            "</style></title></bdi></td></script><script>" + MARK + "</script>",
            "<svg onload=\"" + MARK + ";alert(1)\"><animate onbegin=\"" + MARK + "\" attributeName=x dur=1s>",
            "<img src=x onerror=\"" + MARK + ";alert(1)\">",
            "\" onmouseover=\"" + MARK + "\" autofocus onfocus=\"" + MARK + "\" x=\"",
            "' style='background:url(http://fetched.invalid/a)' x='",
            "[click](javascript:" + MARK + ") <javascript:" + MARK + "> ![i](http://fetched.invalid/b.png)",
            "[r]: http://fetched.invalid/c\n\n![r]\n\n<iframe src=http://fetched.invalid/d></iframe>",
            "}</style><style>@import url(http://fetched.invalid/e);body{background:url(http://fetched.invalid/f)}",
            "\\22 ;}body{display:none;background:url(http://fetched.invalid/g)}/*",
            "<link rel=stylesheet href=http://fetched.invalid/h><meta http-equiv=refresh content=\"0;url=http://fetched.invalid/i\">",
            "<base href=http://fetched.invalid/><form action=http://fetched.invalid/j><input autofocus onfocus=" + MARK
                    + ">",
            "<object data=http://fetched.invalid/k></object><embed src=http://fetched.invalid/l>",
            "${7*7} {{7*7}} #{7*7} <%= 7*7 %> @if(true)",
            "\u202Eesrever\u202C \u2066isolated\u2069 \u200Bzero\u200Dwidth\u2060 \uFEFFmark",
            "\u0000\u0007\u001B[31mred\u001B[0m\u0085\u2028\u2029",
            "=HYPERLINK(\"http://fetched.invalid/m\") +1+1 -1 @SUM(1)",
            "&lt;script&gt;" + MARK + "&lt;/script&gt; &#x3c;script&#x3e;" + MARK + " &amp;amp;",
            "<math><mtext><table><mglyph><style><img src=x onerror=" + MARK
                    + "></style></mglyph></table></mtext></math>",
            "--><!--[if true]><script>" + MARK + "</script><![endif]-->]]><![CDATA[<script>" + MARK + "</script>",
            "W".repeat(10_000));

    @TempDir
    private static Path folder = Path.of("");

    private static Optional<Browser> browser = Optional.empty();

    @BeforeAll
    static void start() throws IOException {
        assumeTrue(Browser.isThere(), "there is no chromium on the path; .ci/run installs it");
        browser = Optional.of(Browser.start(folder));
    }

    @AfterAll
    static void stop() {
        browser.ifPresent(Browser::close);
    }

    /** Every text of the canyon is another attack, each text a word that is looked for. */
    private static RandomCanyon canyon(long seed) {
        int[] turn = {(int) seed};
        return new RandomCanyon(seed, word -> {
            String attack = ATTACKS.get(Math.floorMod(turn[0]++, ATTACKS.size()));
            return attack + " " + word + " " + attack;
        });
    }

    private static Browser opened(String name, String html) throws IOException, InterruptedException {
        Path page = Files.writeString(folder.resolve(name), html);
        browser.orElseThrow().open(page.toUri(), Browser.Look.DESK);
        return browser.orElseThrow();
    }

    private static void isHarmless(Browser page, List<String> words) throws InterruptedException {
        assertThat(page.evaluate("typeof window.ran")).isEqualTo("undefined");
        assertThat(page.requests()).singleElement().asString().startsWith("file:///");
        assertThat(page.complaints()).isEmpty();
        assertThat(page.evaluate(
                        "document.querySelectorAll('script,iframe,object,embed,link,base,form,img,[onload],[onerror],"
                                + "[onfocus],[onmouseover],[onbegin]').length"))
                .isEqualTo("0");
        assertThat(page.evaluate("Array.from(document.querySelectorAll('a')).map(a => a.protocol)"
                        + ".filter(p => p !== 'file:' && p !== 'geo:').join()"))
                .isEmpty();
        assertThat(page.evaluate("getComputedStyle(document.body).display")).isEqualTo("block");
        assertThat(words).isNotEmpty();
        String missing = page.evaluate("(() => { const text = document.body.innerText; return " + "['"
                + String.join("','", words) + "'].filter(word => !text.includes(word)).join(); })()");
        assertThat(missing).isEmpty();
        for (String told : List.of(
                "<script>window.ran=1",
                "<svg onload=",
                "javascript:window.ran=1",
                "@import url(",
                "{{7*7}}",
                "=HYPERLINK")) {
            assertThat(page.evaluate("document.body.innerText.includes('" + told + "')"))
                    .as(told)
                    .isEqualTo("true");
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7})
    void nothingOfASheetRunsOrIsFetched(long seed) throws IOException, InterruptedException {
        RandomCanyon canyon = canyon(seed);

        Browser page = opened("sheet-" + seed + ".html", HtmlSheet.render(canyon.sheet()));

        isHarmless(page, canyon.expected());
        assertThat(page.evaluate("document.title")).contains("as of 2026-11-25");
    }

    /** Markdown has no policy that would step in: what its text keeps from being markup is all there is. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void nothingOfMarkdownRunsOrIsFetched(long seed) throws IOException, InterruptedException {
        RandomCanyon canyon = canyon(seed);
        List<TablesExtension> tables = List.of((TablesExtension) TablesExtension.create());
        String html = HtmlRenderer.builder()
                .extensions(tables)
                .build()
                .render(Parser.builder().extensions(tables).build().parse(MarkdownSheet.render(canyon.sheet())));

        Browser page = opened(
                "markdown-" + seed + ".html",
                "<!DOCTYPE html><html><head><meta charset=\"utf-8\"/></head><body>" + html + "</body></html>");

        isHarmless(page, canyon.expected());
    }

    /** What the tests above would see if escaping failed, on a page that does not escape. */
    @Test
    void whatGetsThroughIsSeen() throws IOException, InterruptedException {
        Browser page = opened(
                "open.html",
                "<!DOCTYPE html><html><body><p>" + ATTACKS.get(0) + ATTACKS.get(3)
                        + "<img src=http://fetched.invalid/b.png></p></body></html>");

        assertThat(page.evaluate("typeof window.ran")).isEqualTo("number");
        assertThat(page.requests()).anyMatch(url -> url.startsWith("http://fetched.invalid/"));
        assertThat(page.complaints()).anyMatch(event -> event.contains("javascriptDialogOpening"));
    }
}
