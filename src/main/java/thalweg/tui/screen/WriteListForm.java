package thalweg.tui.screen;

import java.util.List;
import java.util.Locale;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * What was found, to be written to a file.
 *
 * @param title key of what stands at the top
 * @param canyons how many canyons, 0 where parts are written
 * @param file its name to begin with
 * @param ending of the file's name
 * @param maker of the work, from the name and whether a file may be replaced
 */
record WriteListForm(String title, int canyons, String file, String ending, Maker maker) implements FormTask {

    private static final String YES = "yes";

    /** Makes the work. */
    interface Maker {
        Ask of(String target, boolean overwrite, Surroundings around);
    }

    static WriteListForm of(Go.WriteCanyons go) {
        return new WriteListForm(
                go.canyons() == 1 ? "list_form.canyon" : "list_form.canyons",
                go.canyons(),
                "canyons",
                ".json",
                (target, overwrite, around) -> new Ask.WriteCanyons(go.finding(), target, overwrite));
    }

    static WriteListForm of(Go.WriteParts go) {
        return new WriteListForm(
                "list_form.parts",
                0,
                "parts",
                ".csv",
                (target, overwrite, around) -> new Ask.WriteParts(go.words(), target, overwrite));
    }

    static WriteListForm of(Go.WriteStations go) {
        return new WriteListForm(
                "list_form.stations",
                0,
                "stations",
                ".csv",
                (target, overwrite, around) ->
                        new Ask.WriteStations(go.words(), go.order(), around.settings(), target, overwrite));
    }

    static WriteListForm of(Go.WriteDue go) {
        return new WriteListForm(
                "list_form.due",
                0,
                "parts",
                ".csv",
                (target, overwrite, around) -> new Ask.WriteDue(go.due(), target, overwrite));
    }

    @Override
    public String title(Surroundings around) {
        return around.say(title, canyons);
    }

    @Override
    public boolean stoppable() {
        return canyons > 0;
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .name("file", "list_form.file", file + ending)
                .options(
                        "overwrite",
                        around.say("sheet_form.overwrite"),
                        List.of("no", YES),
                        List.of(around.say("sheet_form.no"), around.say("sheet_form.yes")),
                        "no")
                .done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        String name = filled.text("file");
        String target = name.toLowerCase(Locale.ROOT).endsWith(ending) ? name : name + ending;
        return maker.of(target, filled.text("overwrite").equals(YES), around);
    }
}
