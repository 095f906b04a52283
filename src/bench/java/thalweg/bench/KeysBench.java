package thalweg.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How long the program takes to answer a key on a terminal, what it needs when nobody types, and how much memory: on 20,000
 * canyons with 300,000 stations, and the rig screen on a station of the demo.
 */
final class KeysBench {

    static final String GROUP = "keys";

    private static final int PRESSES = 20;

    private static final Duration IDLE = Duration.ofSeconds(20);

    /** After a start the program compiles what the next keys need, once. */
    private static final Duration TO_REST = Duration.ofSeconds(4);

    private static final String KEY = "16 ms p95, better 10";

    private static final String DOWN = "\033[B";
    private static final String PAGE_DOWN = "\033[6~";
    private static final String HOME = "\033[H";
    private static final String END = "\033[F";
    private static final String ESCAPE = "\033";
    private static final String RIGHT = "\033[C";
    private static final String LEFT = "\033[D";
    private static final String BACKSPACE = "\177";
    private static final String CTRL_C = "\003";

    private final Path home;
    private final Path large;
    private final List<Figure> figures = new ArrayList<>();

    private KeysBench(Path home, Path large) {
        this.home = home;
        this.large = large;
    }

    /** Presses keys in folders of its own. */
    static List<Figure> figures() throws IOException, InterruptedException {
        Path home = Files.createTempDirectory("thalweg-bench");
        try {
            return new KeysBench(home, Large.database()).measured();
        } finally {
            Folder.delete(home);
        }
    }

    private List<Figure> measured() throws IOException, InterruptedException {
        try (Pty pty = Pty.start(home, 24, 80, "scripts/thalweg --demo")) {
            pty.untilShown("Ombre");
            pty.settle();
            pty.end(CTRL_C);
        }
        StartBench.awaitArchive(home);
        lists(24, 80);
        lists(60, 200);
        rig(24, 80);
        rig(60, 200);
        return figures;
    }

    private void lists(int rows, int columns) throws IOException, InterruptedException {
        String size = ", " + columns + " x " + rows;
        try (Pty pty = Pty.start(home, rows, columns, "scripts/thalweg --db '" + large + "'")) {
            pty.untilShown(Large.FIRST);
            pty.settle();
            idle(pty, "canyons" + size);
            press(pty, "Down in canyons" + size, KEY, DOWN);
            press(pty, "PgDn in canyons" + size, KEY, PAGE_DOWN);
            press(pty, "End and Home of canyons" + size, KEY, END, HOME);
            pty.press("/");
            press(pty, "a letter of a search" + size, KEY, "m", "o", "r", BACKSPACE, BACKSPACE, BACKSPACE);
            pty.press(ESCAPE);
            pty.type("s", "Stations");
            press(pty, "Down in stations" + size, KEY, DOWN);
            press(pty, "PgDn in stations" + size, KEY, PAGE_DOWN);
            press(pty, "End and Home of stations" + size, KEY, END, HOME);
            memory(pty, "after that" + size);
            pty.end(CTRL_C);
        }
    }

    private void rig(int rows, int columns) throws IOException, InterruptedException {
        try (Pty pty = Pty.start(home, rows, columns, "scripts/thalweg --demo")) {
            pty.untilShown("Ombre");
            pty.settle();
            pty.type("/eclusaune", "1 of 9");
            pty.type("\r", "Porte");
            pty.type(DOWN + DOWN + "\r", "Station");
            pty.type("r", "Largest angle");
            String size = ", " + columns + " x " + rows;
            press(pty, "a step of the focus in the rig" + size, KEY, RIGHT, LEFT);
            memory(pty, "in the rig" + size);
            pty.end(CTRL_C);
        }
    }

    /** Presses the keys in turn, each after the one before was answered wholly. */
    private void press(Pty pty, String what, String target, String... keys) throws IOException, InterruptedException {
        // The first is not like the others: its classes are still to be linked.
        for (String key : keys) {
            pty.press(key);
        }
        double[] first = new double[PRESSES];
        double[] last = new double[PRESSES];
        for (int i = 0; i < PRESSES; i++) {
            Pty.Answer answer = pty.press(keys[i % keys.length]);
            first[i] = answer.first();
            last[i] = answer.last();
        }
        figures.add(Figure.ofTimes(GROUP, what + ", first byte", first, target));
        figures.add(Figure.ofTimes(GROUP, what + ", last byte", last, ""));
    }

    private void idle(Pty pty, String where) throws IOException, InterruptedException {
        Thread.sleep(TO_REST.toMillis());
        Duration before = processor(pty);
        Thread.sleep(IDLE.toMillis());
        double share = (double) processor(pty).minus(before).toNanos() / IDLE.toNanos();
        figures.add(Figure.of(
                GROUP,
                "idle for " + IDLE.toSeconds() + " s, " + where,
                String.format(Locale.ROOT, "%.2f %%", 100 * share),
                "0.3 % of a processor"));
    }

    private static Duration processor(Pty pty) throws IOException {
        return pty.program().info().totalCpuDuration().orElseThrow();
    }

    /** Only Linux says. */
    private void memory(Pty pty, String where) throws IOException {
        Path status = Path.of("/proc/" + pty.program().pid() + "/status");
        String resident = Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .findFirst()
                .orElseThrow();
        double kibibytes = Double.parseDouble(resident.replaceAll("\\D", ""));
        figures.add(Figure.of(
                GROUP,
                "resident memory, " + where,
                String.format(Locale.ROOT, "%.0f MiB", kibibytes / 1024),
                "150 MB"));
    }
}
