package thalweg.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The languages in which the program speaks. */
public enum Language {
    /** The one in which it is written. */
    EN,
    /** Spanish. */
    ES,
    /** French. */
    FR;

    /** Where an environment says which language messages are in; the first that is set counts. Source: POSIX.1-2017, 8.2. */
    private static final List<String> VARIABLES = List.of("LC_ALL", "LC_MESSAGES", "LANG");

    /** As it is written in settings and arguments, and as a BCP 47 tag. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The language of that word. */
    public static Optional<Language> of(String word) {
        return Arrays.stream(values())
                .filter(language -> language.word().equals(word))
                .findFirst();
    }

    /**
     * The language that an environment asks for, as "es" in "es_ES.UTF-8"; English where it asks for none or for one that
     * is not spoken here.
     *
     * @param environment variables by name
     */
    public static Language asked(Map<String, String> environment) {
        return VARIABLES.stream()
                .map(name -> environment.getOrDefault(name, ""))
                .filter(value -> !value.isEmpty())
                .findFirst()
                .flatMap(value -> of(value.split("[_.@-]", 2)[0].toLowerCase(Locale.ROOT)))
                .orElse(EN);
    }

    /** All words, with commas between. */
    public static String words() {
        return Arrays.stream(values()).map(Language::word).collect(Collectors.joining(", "));
    }
}
