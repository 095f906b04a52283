package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A browser and the tools that read what it printed; a test fails where one is missing. */
final class Tools {

    private static final long LONGEST_SECONDS = 120;

    private final Path folder;

    /**
     * @param folder for whatever they write
     */
    Tools(Path folder) {
        this.folder = folder;
    }

    /** Writes a page for the browser to open. */
    Path page(String name, String html) throws IOException {
        return Files.writeString(folder.resolve(name), html);
    }

    /** The page on paper. */
    Path print(Path page) throws IOException, InterruptedException {
        Path paper = folder.resolve("paper.pdf");
        browse(List.of("--no-pdf-header-footer", "--print-to-pdf=" + paper), page);
        return paper;
    }

    /** What a browser makes of a page, after its scripts ran. */
    String open(Path page) throws IOException, InterruptedException {
        return browse(List.of("--virtual-time-budget=5000", "--dump-dom", "--allow-file-access-from-files"), page);
    }

    /** What a browser has to say about a page: refused styles, failed fetches, scripts. */
    List<String> complaints(Path page) throws IOException, InterruptedException {
        open(page);
        return Files.readString(folder.resolve("errors"))
                .lines()
                .filter(line -> line.contains("CONSOLE"))
                .toList();
    }

    private String browse(List<String> options, Path page) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--enable-logging=stderr",
                "--user-data-dir=" + folder.resolve("profile")));
        command.addAll(options);
        command.add(page.toUri().toString());
        return run(command);
    }

    /** What a program writes to its output. */
    String run(List<String> command) throws IOException, InterruptedException {
        Path output = folder.resolve("output");
        Process process = new ProcessBuilder(command)
                .redirectOutput(output.toFile())
                .redirectError(folder.resolve("errors").toFile())
                .start();
        try {
            assertThat(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS))
                    .as("%s ends", command.get(0))
                    .isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.exitValue()).as("%s", command).isZero();
        return Files.readString(output, StandardCharsets.UTF_8);
    }
}
