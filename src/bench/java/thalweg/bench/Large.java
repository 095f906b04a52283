package thalweg.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The database with 20,000 canyons and 300,000 stations, which is made where it is not there. */
final class Large {

    /** What stands on the screen once the canyons do. Cells that did not change are not sent, so names may come in pieces. */
    static final String FIRST = "(invented";

    private static final Path FILE = Path.of("target/large.db");

    private static final int CANYONS = 20_000;

    private Large() {}

    /** Its file. */
    static Path database() throws IOException {
        if (!Files.exists(FILE)) {
            System.err.println("Making " + FILE + ", once; this takes half an hour or more ...");
            Path aside = FILE.resolveSibling("large.db.new");
            Files.deleteIfExists(aside);
            LargeDatabase.make(aside, CANYONS, 1);
            Files.move(aside, FILE);
        }
        return FILE.toAbsolutePath();
    }
}
