package thalweg.service;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import thalweg.text.Language;
import thalweg.text.Phrases;

/** Reads the words of the program from its resources. */
public final class LoadPhrases {

    /**
     * The files of a language: what it is itself, words of the domain, what profiles, sheets, calculator, settings, screens and changes
     * say, what stays here, tables that come in.
     */
    static final List<String> FILES = List.of(
            "language",
            "words",
            "profile",
            "sheet",
            "rig",
            "compare",
            "why",
            "settings",
            "screen",
            "draft",
            "desk",
            "local",
            "amend",
            "due",
            "plan",
            "stations",
            "timeline",
            "table");

    private LoadPhrases() {}

    /** Read once: every language asks for it, and its files are many. */
    private static final class English {
        private static final Phrases WORDS = new Phrases(patterns(Language.EN));
    }

    /** The English words. */
    public static Phrases english() {
        return English.WORDS;
    }

    /** The words of that language, with the English ones beside what nobody has reviewed. */
    public static Phrases of(Language language) {
        return language == Language.EN
                ? english()
                : new Phrases(patterns(language), LoadSentences.of(language), english());
    }

    private static Map<String, String> patterns(Language language) {
        Map<String, String> patterns = new HashMap<>();
        for (String file : FILES) {
            read("/thalweg/phrases/" + language.word() + "/" + file + ".properties", patterns);
        }
        return patterns;
    }

    private static void read(String resource, Map<String, String> patterns) {
        try (InputStream in = LoadPhrases.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new AssertionError(resource + " is part of the program");
            }
            Properties properties = new Properties();
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            properties.forEach((key, pattern) -> {
                if (patterns.put((String) key, (String) pattern) != null) {
                    throw new AssertionError("the key " + key + " stands twice");
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read", e);
        }
    }
}
