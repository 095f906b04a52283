package thalweg.tui.screen;

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

    /** Why it cannot be sent although no field by itself has a fault; empty text where it can. */
    default String refusal(Filled filled, Surroundings around) {
        return "";
    }
}
