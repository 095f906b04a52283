package thalweg.settings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thalweg.text.Phrases;

/**
 * What a person has set, or what the program brings along where they have not.
 *
 * @param loads offered by name, in order; may be empty
 * @param derating shares of a strength in place of the program's, for rigs that state none, by the words that a rig file has
 */
public record Settings(List<LoadPreset> loads, Map<String, Double> derating) {

    public Settings {
        loads = List.copyOf(loads);
        derating = Collections.unmodifiableMap(new LinkedHashMap<>(derating));
    }

    /** Loads to choose from, and nothing else that is set. */
    public Settings(List<LoadPreset> loads) {
        this(loads, Map.of());
    }

    /** What holds where nothing was set. */
    public static Settings standard(Phrases phrases) {
        return new Settings(StandardLoads.of(phrases));
    }

    /** The same with other loads to choose from. */
    public Settings withLoads(List<LoadPreset> others) {
        return new Settings(others, derating);
    }

    /** The same with other shares of a strength. */
    public Settings withDerating(Map<String, Double> shares) {
        return new Settings(loads, shares);
    }
}
