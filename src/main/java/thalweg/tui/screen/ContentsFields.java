package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.sheet.SheetContents;
import thalweg.tui.core.Surroundings;

/** What a sheet holds, as fields of a form: each thing is shown unless somebody leaves it out. */
final class ContentsFields {

    private static final String SHOWN = "shown";
    private static final String LEFT_OUT = "left_out";

    private ContentsFields() {}

    static Build add(Build build, Surroundings around) {
        for (String key : List.of("history", "analyses", "places", "names")) {
            build.options(
                    key,
                    around.say("sheet_form." + key),
                    List.of(SHOWN, LEFT_OUT),
                    List.of(around.say("sheet_form.shown"), around.say("sheet_form.left_out")),
                    SHOWN);
        }
        return build;
    }

    /** All that others may see but what was left out. */
    static SheetContents chosen(Filled filled) {
        return new SheetContents(
                Optional.empty(),
                shown(filled, "history"),
                shown(filled, "analyses"),
                shown(filled, "places"),
                shown(filled, "names"),
                false);
    }

    private static boolean shown(Filled filled, String key) {
        return !filled.text(key).equals(LEFT_OUT);
    }
}
