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
import thalweg.text.Phrases;

/** Reads the words of the program from its resources. */
public final class LoadPhrases {

    /**
     * The files of a language: words of the domain, what profiles, sheets, calculator, settings, screens and changes
     * say, what stays here.
     */
    static final List<String> FILES = List.of(
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
            "timeline");

    private LoadPhrases() {}

    /** The English words. */
    public static Phrases english() {
        Map<String, String> patterns = new HashMap<>();
        for (String file : FILES) {
            read("/thalweg/phrases/en/" + file + ".properties").forEach((key, pattern) -> {
                if (patterns.put(key, pattern) != null) {
                    throw new AssertionError("the key " + key + " stands twice");
                }
            });
        }
        return new Phrases(patterns);
    }

    private static Map<String, String> read(String resource) {
        try (InputStream in = LoadPhrases.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new AssertionError(resource + " is part of the program");
            }
            Properties properties = new Properties();
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            Map<String, String> patterns = new HashMap<>();
            properties.stringPropertyNames().forEach(key -> patterns.put(key, properties.getProperty(key)));
            return patterns;
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read", e);
        }
    }
}
