package thalweg.tui.runtime;

import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import thalweg.fault.Sentence;
import thalweg.progress.Progress;
import thalweg.progress.StoppedException;

/** The course of one piece of work: tells now and then how far it is, and ends it once that was asked for. */
final class Course implements Progress {

    /** Between two words on how far it is [ms]; also how long work may take before the first. */
    private static final long APART = 150;

    private final BiConsumer<Long, Long> told;
    private final long frame;
    private long last = System.nanoTime();
    private volatile boolean stopped;

    /**
     * @param frame number of the screen that asked for the work
     * @param told is given how much is done, and of how much
     */
    Course(long frame, BiConsumer<Long, Long> told) {
        this.frame = frame;
        this.told = told;
    }

    boolean isFor(long asking) {
        return frame == asking;
    }

    /** From now on the work ends as soon as it can. */
    void stop() {
        stopped = true;
    }

    @Override
    public void at(long done, long all) {
        if (stopped) {
            throw new StoppedException(Sentence.of("It was stopped; nothing of it remains."));
        }
        long now = System.nanoTime();
        if (now - last > TimeUnit.MILLISECONDS.toNanos(APART)) {
            last = now;
            told.accept(done, all);
        }
    }
}
