package thalweg.draft;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.units.UnitSystem;

/**
 * What was typed into a form and is not saved.
 *
 * @param key of the form
 * @param title that stood above it
 * @param where the title of the screen from which it was opened; empty where that says nothing
 * @param units in which its quantities were shown
 * @param focus key of the field that had the focus
 * @param fields by key, in order
 * @param rig beside the fields, where the form is that of a rig
 */
public record Draft(
        DraftKey key,
        String title,
        String where,
        UnitSystem units,
        String focus,
        Map<String, DraftEntry> fields,
        Optional<DraftRig> rig) {

    public Draft {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** The same, opened from a screen of that title. */
    public Draft from(String screen) {
        return new Draft(key, title, screen, units, focus, fields, rig);
    }

    /** Whether nothing was entered that differs from what stood there. */
    public boolean isEmpty() {
        return rig.isEmpty() && changes().isEmpty();
    }

    /** The fields into which something was entered, in order. */
    public List<DraftEntry> changes() {
        return fields.values().stream().filter(DraftEntry::changed).toList();
    }
}
