package thalweg.testing;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads the folder of drafts while a program writes to it. */
public final class KeptDrafts {

    private KeptDrafts() {}

    /**
     * The text of all drafts, of whichever database; empty where none is kept. A file that is written aside, or goes
     * between being listed and being read, is passed over: it was not kept at that moment.
     */
    public static String in(Path drafts) throws IOException {
        StringBuilder all = new StringBuilder();
        for (File database : within(drafts.toFile())) {
            for (File file : within(database)) {
                if (file.getName().endsWith(".json")) {
                    all.append(text(file.toPath()));
                }
            }
        }
        return all.toString();
    }

    /** Names only, for to ask a file for more would fail where it is gone already. */
    private static File[] within(File folder) {
        File[] files = folder.listFiles();
        return files == null ? new File[0] : files;
    }

    private static String text(Path file) throws IOException {
        try {
            return Files.readString(file);
        } catch (NoSuchFileException gone) {
            return "";
        }
    }
}
