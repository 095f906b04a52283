package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.draft.KeptDraft;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * What a form knows of a draft of itself.
 *
 * @param looking whether it is not known yet whether there is one
 * @param found the draft from which it was filled
 * @param changed what of the thing is otherwise than when the entries were begun, one line each
 * @param left entries without a field
 * @param dropped the form as it was when the draft was thrown away, to bring it back
 */
record Recovery(
        boolean looking, Optional<KeptDraft> found, List<String> changed, List<String> left, Optional<Form> dropped) {

    static final Recovery NONE = new Recovery(false, Optional.empty(), List.of(), List.of(), Optional.empty());

    static final Recovery LOOKING = new Recovery(true, Optional.empty(), List.of(), List.of(), Optional.empty());

    Recovery {
        changed = List.copyOf(changed);
        left = List.copyOf(left);
    }

    static Recovery of(KeptDraft found, KeptForm.Refilled refilled) {
        return new Recovery(false, Optional.of(found), refilled.changed(), refilled.left(), Optional.empty());
    }

    /** The same with what has changed in the records since the form opened. */
    Recovery and(KeptForm.Refilled refilled) {
        List<String> more = new ArrayList<>(changed);
        more.addAll(refilled.changed());
        List<String> without = new ArrayList<>(left);
        without.addAll(refilled.left());
        return new Recovery(looking, found, more, without, dropped);
    }

    /** Whether what stands in the form came from a draft that can be thrown away, or was thrown away just now. */
    boolean offers() {
        return found.isPresent();
    }

    /** The draft thrown away, or brought back where the form that it filled is given no more. */
    Recovery with(Optional<Form> thrownAway) {
        return new Recovery(looking, found, changed, left, thrownAway);
    }

    /** What is said above the fields. */
    List<Paragraph> lines(String key, Surroundings around) {
        List<Paragraph> lines = new ArrayList<>();
        if (dropped.isPresent()) {
            lines.add(Paragraph.of(around.say("draft.dropped", key), Style.NOTICE));
            return lines;
        }
        found.ifPresent(draft -> lines.add(
                Paragraph.of(around.say("draft.filled", KeptForm.age(draft.ageSeconds(), around), key), Style.NOTICE)));
        if (!changed.isEmpty()) {
            lines.add(Paragraph.of(around.say("draft.older", String.join("; ", changed)), Style.CAUTION));
        }
        if (!left.isEmpty()) {
            lines.add(Paragraph.of(around.say("draft.left", String.join("; ", left)), Style.CAUTION));
        }
        return lines;
    }
}
