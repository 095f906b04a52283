package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.logbook.CanyonRecord;
import thalweg.service.ExportRecords;
import thalweg.service.ImportRecords;
import thalweg.service.LoadPhrases;
import thalweg.service.MakeSheet;
import thalweg.service.Session;
import thalweg.service.SheetOrder;
import thalweg.sheet.Paper;
import thalweg.testing.Browser;
import thalweg.testing.SampleRecords;
import thalweg.units.UnitSystem;

/**
 * Sheets as people meet them who read them otherwise: by ear, in the dark, on a phone, on paper. Held against the rules of
 * axe-core for WCAG 2.0 and 2.1, A and AA, and its best practice.
 *
 * @see "WCAG 2.1; axe-core 4.11"
 */
final class SheetForEverybodyTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private static final String RUN = """
            axe.run(document, {resultTypes: ['violations'], runOnly: {type: 'tag',
                values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'best-practice']}})
              .then(told => told.violations.flatMap(rule => rule.nodes.slice(0, 3).map(node =>
                rule.id + ': ' + node.target.join(' ') + ': ' + node.failureSummary)).join('\\n').slice(0, 9000))
            """;

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

    private static String breaches(Path page, Browser.Look look) throws IOException, InterruptedException {
        Browser open = browser.orElseThrow();
        open.open(page.toUri(), look);
        open.evaluate(axe() + "; 'ready'");
        return open.evaluate(RUN);
    }

    private static String axe() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                SheetForEverybodyTest.class.getResourceAsStream("/axe.min.js"),
                "axe-core is on the path of the tests")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What differs between looks are colours and widths, and the two that are described in full have all there are. */
    private static List<Path> sheets(Browser.Look look) throws IOException {
        List<Path> all = sheets();
        List<Path> full = SampleRecords.FULLY_KNOWN.stream()
                .map(canyon -> folder.resolve(canyon.canyon().uid().text() + ".html"))
                .toList();
        return look == Browser.Look.DESK ? all : full;
    }

    private static List<Path> sheets() throws IOException {
        List<Path> pages = new ArrayList<>();
        try (Session session = Session.inMemory(CLOCK, "ada")) {
            ImportRecords records = new ImportRecords(session);
            records.accept(records.preview("sample", SampleRecords.bytes()).plan());
            MakeSheet make = new MakeSheet(session, LoadPhrases.english(), "0.1.0");
            SheetOrder order =
                    new SheetOrder(MakeSheet.Format.HTML, Paper.A4, UnitSystem.METRIC, Optional.empty(), folder);
            for (CanyonRecord canyon : new ExportRecords(session).orAll(List.of())) {
                pages.add(Files.write(folder.resolve(canyon.canyon().uid().text() + ".html"), make.of(canyon, order)));
            }
        }
        return pages;
    }

    @ParameterizedTest
    @EnumSource(Browser.Look.class)
    void everySampleSheetKeepsTheRules(Browser.Look look) throws IOException, InterruptedException {
        List<Path> sheets = sheets(look);
        assertThat(sheets).isNotEmpty();
        for (Path sheet : sheets) {
            assertThat(breaches(sheet, look)).as("%s of %s", look, sheet).isEmpty();
        }
    }

    @Test
    void theRulesCatchWhatBreaksThem() throws IOException, InterruptedException {
        Path broken = Files.writeString(
                folder.resolve("broken.html"),
                "<html><head><title>x</title></head><body><main><h1>x</h1><h3>y</h3>"
                        + "<p style='color:#bbb;background:#fff'>pale</p><img src='data:,'></main></body></html>");

        assertThat(breaches(broken, Browser.Look.DESK))
                .contains("html-has-lang", "heading-order", "color-contrast", "image-alt");
    }
}
