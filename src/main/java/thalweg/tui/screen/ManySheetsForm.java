package thalweg.tui.screen;

import java.util.List;
import thalweg.text.Language;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.units.UnitSystem;

/**
 * The sheets of many canyons to write into a folder.
 *
 * @param go of which
 */
record ManySheetsForm(Go.WriteSheets go) implements FormTask {

    private static final String YES = "yes";

    /** The folder in which the program was started. */
    private static final String HERE = ".";

    @Override
    public String title(Surroundings around) {
        return around.phrases().count("sheets_form.title", go.canyons());
    }

    @Override
    public boolean stoppable() {
        return true;
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around)
                .word("format", "sheet_form.format", "sheet_format", Ask.SheetFormat.class, Ask.SheetFormat.HTML)
                .word("language", "sheet_form.language", "sheet_language", Language.class, SheetForm.spoken(around))
                .name("folder", "sheets_form.folder", HERE)
                .options(
                        "overwrite",
                        around.say("sheets_form.overwrite"),
                        List.of("no", YES),
                        List.of(around.say("sheet_form.no"), around.say("sheets_form.yes")),
                        "no")
                .word("units", "sheet_form.units", "units", UnitSystem.class, around.units());
        return Form.of(ContentsFields.add(build, around).done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.WriteSheets(
                go.finding(),
                filled.word("format", Ask.SheetFormat.class).orElseThrow(),
                filled.word("language", Language.class).orElse(Language.EN),
                filled.text("folder"),
                filled.text("overwrite").equals(YES),
                filled.word("units", UnitSystem.class).orElse(around.units()),
                around.settings(),
                ContentsFields.chosen(filled));
    }
}
