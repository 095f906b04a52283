package thalweg.tui.runtime;

import thalweg.progress.Progress;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;

/** Does the work that screens ask for. Called by several workers at once. */
@FunctionalInterface
public interface EffectRunner {

    /**
     * Does it, however long that takes.
     *
     * @param effect any but {@link Effect.Copy}, which the terminal does itself
     * @return the result, for the screen that asked
     * @throws thalweg.fault.AppException when it came to nothing; the screen is told the sentence
     */
    Message run(Effect effect);

    /** Whether it can say if somebody else changed something, upon {@link Effect.Look}. */
    default boolean watches() {
        return false;
    }

    /** Has it told, from any thread, when work waits for another program. */
    default void onWaiting(Runnable waiting) {}

    /**
     * The same, telling how far it is where it takes long.
     *
     * @throws thalweg.progress.StoppedException when it was stopped
     */
    default Message run(Effect effect, Progress progress) {
        return run(effect);
    }
}
