package thalweg.tui.screen;

import java.util.List;
import thalweg.route.Part;

/** The fields of a form that say what a part is made of. */
final class HardwareFields {

    /** By which they are known, in their order. */
    static final List<String> KEYS = List.of("material", "size", "standard", "maker", "batch");

    private HardwareFields() {}

    /** Adds them as they are filled at first. */
    static Build add(Build build, Part.Hardware made) {
        return build.text("material", "form.part.material", made.material())
                .text("size", "form.part.size", made.size())
                .text("standard", "form.part.standard", made.standard())
                .text("maker", "form.part.maker", made.maker())
                .text("batch", "form.part.batch", made.batch());
    }

    /** What they say. */
    static Part.Hardware filled(Filled filled) {
        return new Part.Hardware(
                filled.text("material"),
                filled.text("size"),
                filled.text("standard"),
                filled.text("maker"),
                filled.text("batch"));
    }
}
