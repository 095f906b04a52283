package thalweg.service;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.sheet.pdf.FontFile;

/** Fonts that a person put in place for scripts that those of the program lack. */
final class OwnFonts {

    private OwnFonts() {}

    /**
     * Every TrueType font in a folder, by the names of the files.
     *
     * @param folder that need not be there
     * @throws InputException when it cannot be read
     */
    static List<FontFile> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.{ttf,TTF}")) {
            found.forEach(files::add);
        } catch (IOException e) {
            throw new InputException(Sentence.of("The folder {0} cannot be read; check its permissions.", folder), e);
        }
        Collections.sort(files);
        return files.stream()
                .map(file -> new FontFile(file.toString(), ReadFile.bytes(file)))
                .toList();
    }
}
