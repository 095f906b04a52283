package thalweg.tui.screen;

import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** The keys of the first screen that are about the database as a whole. */
final class DeskKeys {

    private DeskKeys() {}

    static List<Binding> of(Screen screen, Surroundings around) {
        String readOnly = around.say("read_only.refused");
        return List.of(Binding.of(Key.of('d'), around.say("key.drafts"), () -> Step.open(screen, new Go.Drafts()))
                .unless(around.readOnly(), readOnly)
                .quiet());
    }

    /** The screen, with a word on the drafts that wait, if there are any. */
    static Step waiting(Screen screen, Told.DraftsListed listed, Surroundings around) {
        Step step = Step.stay(screen);
        int waiting = listed.drafts().size();
        return waiting == 0 ? step : step.saying(around.phrases().count("drafts.wait", waiting));
    }
}
