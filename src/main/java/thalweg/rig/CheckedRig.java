package thalweg.rig;

import java.util.List;
import java.util.Optional;

/**
 * What became of a draft: the rig, or the findings against it, never both.
 *
 * @param input the rig; empty where there are findings
 * @param findings all of them, in the order of the file
 */
public record CheckedRig(Optional<RigInput> input, List<RigFinding> findings) {

    public CheckedRig {
        findings = List.copyOf(findings);
        if (input.isPresent() != findings.isEmpty()) {
            throw new IllegalArgumentException("a draft is a rig or has findings against it");
        }
    }
}
