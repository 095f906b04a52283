package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/** The name by which everything that is entered is signed from now on. */
record KeeperForm() implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("keeper.title");
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        Optional<String> set = around.settings().keeper();
        return List.of(Paragraph.of(
                set.isPresent()
                        ? around.say("keeper.is_set", set.get())
                        : around.say("keeper.is_account", around.keeper())));
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(
                new Build(around).name("name", "keeper.name", around.keeper()).done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.SetKeeper(filled.text("name"));
    }
}
