package thalweg.rig;

import org.jspecify.annotations.Nullable;

/**
 * A rig that was kept, with its answer: computed when it is first asked for, and only then, since a list shows many rigs
 * and a reader looks at one.
 */
public final class KeptRig {

    private final RigInput input;
    private @Nullable RigAnswer answer;

    /**
     * A rig whose answer nobody has asked for.
     */
    public KeptRig(RigInput input) {
        this.input = input;
    }

    /** The rig. */
    public RigInput input() {
        return input;
    }

    /** The same answer each time. */
    public RigAnswer answer() {
        RigAnswer known = answer;
        if (known == null) {
            known = Analyze.of(input);
            answer = known;
        }
        return known;
    }
}
