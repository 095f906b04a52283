package thalweg.exchange.gpx;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files of waypoints made by hand after the open schema, in the ways in which programs write them. */
final class GpxFiles {

    private static final Path FOLDER = Path.of("src/test/resources/thalweg/exchange/gpx");

    private GpxFiles() {}

    static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
