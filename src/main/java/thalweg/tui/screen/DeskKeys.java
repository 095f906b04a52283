package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** The keys of the first screen that are about the database as a whole. */
final class DeskKeys {

    /** The word for leaving to the demo. */
    static final String DEMO = "demo";

    private DeskKeys() {}

    /**
     * The keys.
     *
     * @param empty whether there is no canyon in the database
     */
    static List<Binding> of(Screen screen, boolean empty, Surroundings around) {
        String readOnly = around.say("read_only.refused");
        List<Binding> bindings = new ArrayList<>();
        if (empty) {
            bindings.add(Binding.of(
                    Key.of('v'), around.say("key.demo"), () -> Step.stay(screen).doing(new Effect.Leave(DEMO))));
        }
        bindings.add(Binding.of(Key.of('i'), around.say("key.import"), () -> Step.open(screen, new Go.ReadRecords()))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('b'), around.say("key.backup"), () -> Step.open(screen, new Go.BackUp()))
                .quiet());
        bindings.add(Binding.of(Key.of('y'), around.say("key.keeper"), () -> Step.open(screen, new Go.SetKeeper()))
                .unless(around.readOnly(), readOnly)
                .quiet());
        bindings.add(Binding.of(Key.of('d'), around.say("key.drafts"), () -> Step.open(screen, new Go.Drafts()))
                .unless(around.readOnly(), readOnly)
                .quiet());
        return bindings;
    }

    /** The screen, with a word on the drafts that wait, if there are any. */
    static Step waiting(Screen screen, Told.DraftsListed listed, Surroundings around) {
        Step step = Step.stay(screen);
        int waiting = listed.drafts().size();
        return waiting == 0 ? step : step.saying(around.phrases().count("drafts.wait", waiting));
    }
}
