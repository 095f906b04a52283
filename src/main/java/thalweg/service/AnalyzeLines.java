package thalweg.service;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import thalweg.exchange.json.RigLine;
import thalweg.rig.RigInput;

/** Computes rigs that stand one a line, each as soon as its line is there. */
public final class AnalyzeLines {

    private final Predicate<String> out;
    private final UnaryOperator<RigInput> adjust;
    private long lines;
    private long refused;
    private boolean heard = true;

    /**
     * @param out takes an answer, which is one line with its end, and says whether anybody still listens
     * @param adjust what is made of each rig before it is computed
     */
    public AnalyzeLines(Predicate<String> out, UnaryOperator<RigInput> adjust) {
        this.out = out;
        this.adjust = adjust;
    }

    /**
     * Answers the lines of a file.
     *
     * @throws thalweg.fault.InputException when there is none, or it cannot be read to its end
     */
    public void answer(Path file) {
        AnalyzeRig.open(file, in -> {
            answer(file.toString(), in);
            return lines;
        });
    }

    /**
     * Answers the lines of a stream until it ends or nobody listens; blank ones are passed over.
     *
     * @param name what the stream is called in messages
     * @throws IOException when it cannot be read
     */
    public void answer(String name, InputStream in) throws IOException {
        BoundedLines stream = new BoundedLines(in, AnalyzeRig.LARGEST);
        Optional<BoundedLines.Line> next = heard ? stream.next() : Optional.empty();
        while (next.isPresent()) {
            BoundedLines.Line line = next.get();
            if (line.bytes().isEmpty() || !isBlank(line.bytes().get())) {
                put(line.bytes()
                        .map(bytes -> RigLine.of(name, line.number(), bytes, adjust))
                        .orElseGet(() -> RigLine.tooLong(name, line.number(), AnalyzeRig.LARGEST)));
            }
            next = heard ? stream.next() : Optional.empty();
        }
    }

    private void put(RigLine answer) {
        lines++;
        refused += answer.refused() ? 1 : 0;
        heard = out.test(answer.text());
    }

    /** White space as JSON has it. */
    private static boolean isBlank(byte[] line) {
        for (byte one : line) {
            if (one != ' ' && one != '\t' && one != '\r') {
                return false;
            }
        }
        return true;
    }

    /** How many lines were answered. */
    public long lines() {
        return lines;
    }

    /** Whether somebody listened to all of it. */
    public boolean heard() {
        return heard;
    }

    /** How many of them hold no rig that can be computed. */
    public long refused() {
        return refused;
    }
}
