package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/** A file of records to name. It leads to what the file would change, or to what is wrong with it. */
record ImportForm() implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("import_form.title");
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .labelled("file", around.say("import_form.file"), around.say("help.import_form.file"))
                .done());
    }

    @Override
    public String send(Surroundings around) {
        return around.say("key.read_file");
    }

    @Override
    public boolean stoppable() {
        return true;
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return filled.text("file").isEmpty() ? around.say("import_form.no_file") : "";
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.ReadRecords(filled.text("file"));
    }

    @Override
    public Optional<Onward> onward(Told answer, Filled sent, Surroundings around) {
        if (answer instanceof Told.TableRead table) {
            return Optional.of(new Onward(new Go.MatchColumns(table), true));
        }
        if (!(answer instanceof Told.RecordsRead read)) {
            return Optional.empty();
        }
        if (!read.findings().isEmpty()) {
            return Optional.of(new Onward(new Go.Read(read.name(), nothingTaken(read, around)), false));
        }
        return Optional.of(new Onward(new Go.TakeIn(read.name(), read.plan()), true));
    }

    private static List<Paragraph> nothingTaken(Told.RecordsRead read, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        String broken =
                around.phrases().count("import_form.broken", read.findings().size());
        text.add(Paragraph.of(broken, Style.ERROR));
        text.add(Paragraph.gap());
        read.findings()
                .forEach(finding -> text.add(Paragraph.of(around.phrases().say(finding))));
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say("waypoints_form.again"), Style.FAINT));
        return text;
    }
}
