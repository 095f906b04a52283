package thalweg.why;

import java.util.List;
import java.util.Set;
import thalweg.rig.RigState;
import thalweg.rig.RigStudy;
import thalweg.settings.LoadPreset;

/**
 * What is to be explained.
 *
 * @param study the answer, and what else was studied
 * @param starts what the rig began with and nobody has stated
 * @param swung the state of the sector that is shown; the one at the aim where no other is
 * @param loads that have a name
 */
public record Question(RigStudy study, Set<Ground.Kind> starts, RigState swung, List<LoadPreset> loads) {

    public Question {
        starts = Set.copyOf(starts);
        loads = List.copyOf(loads);
    }

    /** A rig from a file, in which everything that could be left out was left out on purpose. */
    public static Question of(RigStudy study, List<LoadPreset> loads) {
        return new Question(study, Set.of(), study.answer().steady(), loads);
    }
}
