package thalweg.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** How long the start script takes from its call until the first canyon stands on a terminal. */
final class StartBench {

    private static final int STARTS = 20;

    /** The start script makes its archive of classes in the background, after the first start. */
    private static final long PATIENCE_SECONDS = 60;

    private static final String FIRST_ON_THE_SCREEN = "Ombre";

    private final Path folder;

    private StartBench(Path folder) {
        this.folder = folder;
    }

    /** Starts the program again and again on a database of its own, with the sample data in it. */
    static List<Figure> figures() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("thalweg-bench");
        try {
            return new StartBench(folder).measured();
        } finally {
            Folder.delete(folder);
        }
    }

    private List<Figure> measured() throws IOException, InterruptedException {
        double first = start();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!hasArchive()) {
            if (System.nanoTime() > end) {
                throw new IOException("the start script made no archive of classes in a minute");
            }
            Thread.sleep(200);
        }
        start();
        double[] starts = new double[STARTS];
        for (int i = 0; i < STARTS; i++) {
            starts[i] = start();
        }
        Arrays.sort(starts);
        double mean = Arrays.stream(starts).average().orElseThrow();
        return List.of(
                figure("first start ever, makes the demo database", first, OptionalDouble.empty()),
                figure("start to first picture", mean, OptionalDouble.of(starts[STARTS * 95 / 100])));
    }

    private static Figure figure(String what, double mean, OptionalDouble p95) {
        return new Figure("start", what, mean, OptionalDouble.empty(), OptionalDouble.empty(), p95, "");
    }

    private boolean hasArchive() throws IOException {
        Path cache = folder.resolve("cache/thalweg");
        if (!Files.isDirectory(cache)) {
            return false;
        }
        try (Stream<Path> files = Files.list(cache)) {
            return files.anyMatch(file -> file.toString().endsWith(".jsa"));
        }
    }

    /** One start, ended by the key that ends the program [µs]. */
    private double start() throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder("script", "-qec", "stty rows 24 cols 80; exec scripts/thalweg --demo", "/dev/null");
        builder.redirectErrorStream(true);
        for (String name : List.of("data", "state", "cache", "config")) {
            builder.environment().put("XDG_" + name.toUpperCase(Locale.ROOT) + "_HOME", "" + folder.resolve(name));
        }
        builder.environment().put("TERM", "xterm-256color");
        builder.environment().put("LC_ALL", "C.UTF-8");
        long begin = System.nanoTime();
        Process process = builder.start();
        try {
            readUntilItStands(process.getInputStream());
            double microseconds = (System.nanoTime() - begin) / 1e3;
            OutputStream keys = process.getOutputStream();
            keys.write('q');
            keys.flush();
            process.getInputStream().readAllBytes();
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
                throw new IOException("the program did not end as it should");
            }
            return microseconds;
        } finally {
            process.destroy();
        }
    }

    private static void readUntilItStands(InputStream screen) throws IOException {
        StringBuilder seen = new StringBuilder();
        byte[] some = new byte[4096];
        while (seen.indexOf(FIRST_ON_THE_SCREEN) < 0) {
            int read = screen.read(some);
            if (read < 0) {
                throw new IOException("the first picture never came: " + seen);
            }
            seen.append(new String(some, 0, read, StandardCharsets.ISO_8859_1));
        }
    }
}
