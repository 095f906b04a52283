package thalweg.tui.screen;

import java.util.Optional;
import thalweg.body.ThingBody;

/** Chooses between entering a new thing and changing one. */
final class Save {

    private Save() {}

    static Ask of(Optional<ThingBody> before, ThingBody after) {
        return before.<Ask>map(was -> new Ask.SaveChanged(was, after)).orElseGet(() -> new Ask.SaveNew(after));
    }
}
