package thalweg.tui.screen;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.tui.core.Surroundings;
import thalweg.why.Ground;

/** What a rig begins with because it needs something there. It stays assumed until somebody changes or confirms it. */
enum StartValue {
    /** A person with gear. */
    LOAD(Ground.Kind.LOAD),
    /** Straight down. */
    AIM(Ground.Kind.AIM),
    /** How the strands are laid. */
    LAYOUT(Ground.Kind.LAYOUT),
    /** What they are made of. */
    MATERIAL(Ground.Kind.STIFFNESS);

    private final Ground.Kind ground;

    StartValue(Ground.Kind ground) {
        this.ground = ground;
    }

    /** All of them, as for a rig of which nobody has stated anything. */
    static Set<StartValue> all() {
        return Set.copyOf(EnumSet.allOf(StartValue.class));
    }

    /** What figures that rest on it call it. */
    Ground.Kind ground() {
        return ground;
    }

    /** Keys of the fields of the form that state it, any one of which does. */
    Set<String> fields() {
        return switch (this) {
            case LOAD -> Set.of("preset", "load");
            case AIM -> Set.of("toward");
            case LAYOUT -> Set.of("layout");
            case MATERIAL -> Set.of("material");
        };
    }

    /** The one that a field of the form states. */
    static Optional<StartValue> in(String field) {
        return EnumSet.allOf(StartValue.class).stream()
                .filter(one -> one.fields().contains(field))
                .findFirst();
    }

    /** Those that are left, in words: "load, material". */
    static String words(Set<StartValue> left, Surroundings around) {
        return EnumSet.allOf(StartValue.class).stream()
                .filter(left::contains)
                .map(one -> around.say("rig.start." + one.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
    }
}
