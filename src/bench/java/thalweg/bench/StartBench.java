package thalweg.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** How long the start script takes from its call until the first canyon stands on a terminal, and how long the end. */
final class StartBench {

    static final String GROUP = "start";

    private static final int STARTS = 20;

    /** The start script makes its archive of classes in the background, after the first start. */
    private static final long PATIENCE_SECONDS = 120;

    private static final String FIRST_OF_THE_DEMO = "Ombre";

    private static final String RATIO = "8 x bare Java, better 5";

    private final Path home;
    private final Path large;

    private StartBench(Path home, Path large) {
        this.home = home;
        this.large = large;
    }

    /** Starts the program again and again in folders of its own. */
    static List<Figure> figures() throws IOException, InterruptedException {
        Path home = Files.createTempDirectory("thalweg-bench");
        try {
            return new StartBench(home, Large.database()).measured();
        } finally {
            Folder.delete(home);
        }
    }

    private List<Figure> measured() throws IOException, InterruptedException {
        List<Figure> figures = new ArrayList<>();
        double first = once(24, 80, "--demo", FIRST_OF_THE_DEMO).start();
        figures.add(Figure.of(GROUP, "first start ever, makes the demo database", Figure.time(first), ""));
        awaitArchive(home);
        figures.add(Figure.ofTimes(GROUP, "bare Java that prints a line", bare(), ""));
        figures.addAll(starts("demo, 80 x 24", 24, 80, "--demo", FIRST_OF_THE_DEMO));
        String db = "--db '" + large + "'";
        figures.addAll(starts("20,000 canyons, 80 x 24", 24, 80, db, Large.FIRST));
        figures.addAll(starts("20,000 canyons, 200 x 60", 60, 200, db, Large.FIRST));
        return figures;
    }

    /** Waits until the archive of classes is made that the start in that home began. */
    static void awaitArchive(Path home) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!hasArchive(home)) {
            if (System.nanoTime() > end) {
                throw new IOException("the start script made no archive of classes in two minutes");
            }
            Thread.sleep(200);
        }
    }

    private static boolean hasArchive(Path home) throws IOException {
        Path cache = home.resolve("cache/thalweg");
        if (!Files.isDirectory(cache)) {
            return false;
        }
        try (Stream<Path> files = Files.list(cache)) {
            return files.anyMatch(file -> file.toString().endsWith(".jsa"));
        }
    }

    private record Once(double start, double end) {}

    private Once once(int rows, int columns, String arguments, String text) throws IOException, InterruptedException {
        try (Pty pty = Pty.start(home, rows, columns, "scripts/thalweg " + arguments)) {
            double start = pty.untilShown(text);
            pty.settle();
            return new Once(start, pty.end("q"));
        }
    }

    private List<Figure> starts(String where, int rows, int columns, String arguments, String text)
            throws IOException, InterruptedException {
        once(rows, columns, arguments, text);
        double[] starts = new double[STARTS];
        double[] ends = new double[STARTS];
        for (int i = 0; i < STARTS; i++) {
            Once once = once(rows, columns, arguments, text);
            starts[i] = once.start();
            ends[i] = once.end();
        }
        return List.of(
                Figure.ofTimes(GROUP, "start to first rows, " + where, starts, RATIO),
                Figure.ofTimes(GROUP, "q to the end, " + where, ends, "100 ms"));
    }

    /** The least that a program in Java can take here, with the same collector and compiler. */
    private double[] bare() throws IOException, InterruptedException {
        String classes = System.getProperty("java.class.path");
        double[] times = new double[STARTS];
        for (int i = 0; i < STARTS; i++) {
            try (Pty pty = Pty.start(
                    home,
                    24,
                    80,
                    "java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -cp '" + classes + "' "
                            + BareJava.class.getName())) {
                times[i] = pty.untilShown(BareJava.LINE);
                pty.end("");
            }
        }
        return times;
    }
}
