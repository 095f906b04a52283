package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/** What a form is for: its fields, and what is done with them once they are filled in. */
interface FormTask {

    /** What stands at the top. */
    String title(Surroundings around);

    /** What a person should know before filling it in, above the fields. */
    default List<Paragraph> intro(Surroundings around) {
        return List.of();
    }

    /** Under what its entries are kept until they are saved; empty for a form of which nothing is kept. */
    default Optional<DraftKey> draft() {
        return Optional.empty();
    }

    /** What tells its draft from others: its title, where that says enough. */
    default String draftTitle(Surroundings around) {
        return title(around);
    }

    /** The form as it opens. */
    Form form(Surroundings around);

    /** Whether the work may take long, so that Esc stops it. */
    default boolean stoppable() {
        return false;
    }

    /** The work to be done with it, when no field has a fault. */
    Effect ask(Filled filled, Surroundings around);

    /** The work that shows what would come of it, so that it can be looked at first; empty where there is none. */
    default Optional<Effect> look(Filled filled, Surroundings around) {
        return Optional.empty();
    }

    /** Whether it can be looked at first. */
    default boolean looks() {
        return false;
    }

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

    /** The form after what was entered into one field, where that fills others. */
    default Form adapted(Form before, Form after, Surroundings around) {
        return after;
    }
}
