package thalweg.settings;

import java.util.List;
import thalweg.text.Phrases;

/**
 * What a person has set, or what the program brings along where they have not.
 *
 * @param loads offered by name, in order; may be empty
 */
public record Settings(List<LoadPreset> loads) {

    public Settings {
        loads = List.copyOf(loads);
    }

    /** What holds where nothing was set. */
    public static Settings standard(Phrases phrases) {
        return new Settings(StandardLoads.of(phrases));
    }

    /** The same with other loads to choose from. */
    public Settings withLoads(List<LoadPreset> others) {
        return new Settings(others);
    }
}
