package thalweg.service;

import java.util.LinkedHashMap;
import java.util.Map;
import thalweg.rig.Analyze;
import thalweg.rig.FindPeakRange;
import thalweg.rig.PeakRange;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;

/**
 * What the model says about rigs that were kept. It says the same each time, and the range of the peaks takes most of the
 * time of a sheet, so that the last ones are remembered: a preview, the sheet after it and its other forms compute once.
 */
final class Answers {

    /** More than the canyon with the most stations has; an answer takes some ten kilobytes. */
    private static final int MOST = 100;

    /**
     * What is said about one rig.
     *
     * @param answer of the model
     * @param peaks between what its peaks lie
     */
    record Said(RigAnswer answer, PeakRange peaks) {}

    private final Map<RigInput, Said> last = new LinkedHashMap<>(MOST, 0.75F, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<RigInput, Said> eldest) {
            return size() > MOST;
        }
    };

    /** The same for the same rig. */
    Said about(RigInput rig) {
        synchronized (last) {
            Said known = last.get(rig);
            if (known != null) {
                return known;
            }
        }
        RigAnswer answer = Analyze.of(rig);
        Said said = new Said(answer, FindPeakRange.of(answer));
        synchronized (last) {
            last.put(rig, said);
        }
        return said;
    }
}
