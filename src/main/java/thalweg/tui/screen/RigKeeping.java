package thalweg.tui.screen;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.draft.Draft;
import thalweg.draft.DraftEntry;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.draft.DraftRig;
import thalweg.draft.KeptDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.Vector3;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * Keeps a rig that somebody stated something of and that is not kept with its station. To look at a rig and move its focus
 * states nothing, and leaves no draft.
 */
final class RigKeeping {

    /** Before the key of a field of the open form in which something stands that nobody has stated. */
    private static final String FIELD = "field ";

    private RigKeeping() {}

    /** Under what it is kept. */
    static DraftKey key(Go.Rig go) {
        return go.analysis()
                .map(analysis -> DraftKey.of(DraftKind.RIG, analysis))
                .orElseGet(
                        () -> DraftKey.anew(DraftKind.RIG, go.anchor().anchor().uid()));
    }

    /** What is to be kept of the screen. */
    static Optional<Draft> draft(RigScreen screen, Surroundings around) {
        Optional<InventoryRig> rig = screen.rig().filter(known -> known.draft().isPresent());
        boolean typing = screen.options()
                .filter(form -> KeptForm.entries(form.first(), form.last()).values().stream()
                        .anyMatch(DraftEntry::changed))
                .isPresent();
        boolean stated =
                rig.filter(known -> !known.kept() && states(known, screen)).isPresent();
        if (around.readOnly() || rig.isEmpty() || !(typing || stated)) {
            return Optional.empty();
        }
        Set<String> unstated =
                screen.starts().stream().map(StartValue::name).collect(Collectors.toCollection(HashSet::new));
        Map<String, DraftEntry> fields = screen.options()
                .filter(form -> typing)
                .map(form -> KeptForm.entries(form.first(), form.last()))
                .orElse(Map.of());
        screen.options().ifPresent(form -> form.open().forEach(field -> unstated.add(FIELD + field)));
        String focus = screen.options().map(form -> form.last().focused().key()).orElse("");
        return Optional.of(new Draft(
                key(screen.go()),
                screen.title(around),
                "",
                around.units(),
                focus,
                fields,
                Optional.of(new DraftRig(rig.get().draft().orElseThrow(), unstated))));
    }

    private static boolean states(InventoryRig rig, RigScreen screen) {
        RigDraft now = rig.draft().orElseThrow();
        boolean same = rig.entered()
                .draft()
                .filter(known -> known.equals(focusedLike(now, known)))
                .isPresent();
        return !same || !screen.starts().equals(begun(screen.go()));
    }

    private static RigDraft focusedLike(RigDraft rig, RigDraft other) {
        List<Double> focus = other.rig().focus();
        return rig.withRig(rig.rig().withFocus(new Vector3(focus.get(0), focus.get(1), focus.get(2))));
    }

    /** What nobody has stated when the rig opens. */
    static Set<StartValue> begun(Go.Rig go) {
        return go.kept().isPresent() ? Set.of() : StartValue.all();
    }

    /** The screen with the rig as it was left; one step back is the rig as it is entered today. */
    static RigScreen restored(RigScreen screen, KeptDraft kept, Surroundings around) {
        Optional<DraftRig> left = kept.draft().rig();
        Optional<InventoryRig> entered = screen.rig()
                .map(InventoryRig::entered)
                .filter(rig -> rig.draft().isPresent());
        if (left.isEmpty() || entered.isEmpty()) {
            return screen;
        }
        Set<StartValue> starts = Arrays.stream(StartValue.values())
                .filter(start -> left.get().unstated().contains(start.name()))
                .collect(Collectors.toSet());
        InventoryRig rig = entered.get()
                .changed(left.get().rig(), begun(screen.go()))
                .remarking(around.say("draft.rig", KeptForm.age(kept.ageSeconds(), around)));
        RigScreen restored = new RigScreen(
                screen.go(),
                Optional.of(rig),
                RigFigures.of(rig.draft()),
                starts,
                Optional.empty(),
                screen.view(),
                screen.ranging());
        return kept.draft().fields().isEmpty()
                ? restored
                : restored.with(Optional.of(form(kept.draft(), left.get(), starts, around)));
    }

    private static RigOptions form(Draft draft, DraftRig left, Set<StartValue> starts, Surroundings around) {
        RigOptions opened = RigOptions.of(left.rig(), starts, around);
        Form then =
                RigOptions.of(left.rig(), starts, around.with(draft.units())).last();
        Form filled =
                KeptForm.refilled(opened.last(), then, draft, false, around).form();
        Set<String> open = left.unstated().stream()
                .filter(name -> name.startsWith(FIELD))
                .map(name -> name.substring(FIELD.length()))
                .collect(Collectors.toSet());
        return opened.refilled(filled, open, around);
    }
}
