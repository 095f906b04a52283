package thalweg.settings;

import java.util.List;
import java.util.Optional;
import thalweg.text.Phrases;
import thalweg.units.Mass;

/** The loads that are offered where a person has set none. */
final class StandardLoads {

    /** The mass in the drop tests of EN 892 and UIAA 101. */
    private static final double ONE_KILOGRAMS = 80;

    /** The mass in the drop test of EN 1891 for ropes of type A. */
    private static final double WET_KILOGRAMS = 100;

    /** Common practice in rescue. */
    private static final double TWO_KILOGRAMS = 200;

    /** From memory, unconfirmed: a person lowered with a hand on the brake, who is not stopped hard. */
    private static final double LOWERED = 1.5;

    /** A load that is let go without a fall. Source: Gere, Mechanics of Materials, 2.8, with h = 0. */
    private static final double SUDDEN = 2;

    private StandardLoads() {}

    static List<LoadPreset> of(Phrases phrases) {
        return List.of(
                preset(phrases, "one", ONE_KILOGRAMS, 1),
                preset(phrases, "wet", WET_KILOGRAMS, 1),
                preset(phrases, "two", TWO_KILOGRAMS, 1),
                preset(phrases, "lowered", WET_KILOGRAMS, LOWERED),
                preset(phrases, "bouncing", WET_KILOGRAMS, SUDDEN));
    }

    private static LoadPreset preset(Phrases phrases, String key, double kilograms, double factor) {
        return new LoadPreset(
                phrases.say("settings.load." + key),
                Optional.of(new Mass(kilograms)),
                Optional.empty(),
                factor,
                phrases.say("settings.load_source." + key));
    }
}
