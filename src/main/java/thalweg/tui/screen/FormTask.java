package thalweg.tui.screen;

import java.util.Optional;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/** What a form is for: its fields, and what is done with them once they are filled in. */
interface FormTask {

    /** What stands at the top. */
    String title(Surroundings around);

    /** The form as it opens. */
    Form form(Surroundings around);

    /** The work to be done with it, when no field has a fault. */
    Ask ask(Filled filled, Surroundings around);

    /** What the key that sends it is called. */
    default String send(Surroundings around) {
        return around.say("key.save");
    }

    /**
     * Where an answer leads.
     *
     * @param go the place to go
     * @param done whether the form has done its work and gives way; otherwise it waits below
     */
    record Onward(Go go, boolean done) {}

    /** Where an answer to what was sent leads, if it does not just close the form. */
    default Optional<Onward> onward(Told answer, Filled sent, Surroundings around) {
        return Optional.empty();
    }

    /** Why it cannot be sent although no field by itself has a fault; empty text where it can. */
    default String refusal(Filled filled, Surroundings around) {
        return "";
    }
}
