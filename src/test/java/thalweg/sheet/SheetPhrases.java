package thalweg.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import thalweg.text.Phrases;

/** The English phrases that a sheet needs, as they are shipped. */
public final class SheetPhrases {

    public static final Phrases ENGLISH = new Phrases(read());

    private SheetPhrases() {}

    private static Map<String, String> read() {
        Map<String, String> patterns = new LinkedHashMap<>();
        for (String file : List.of("words", "profile", "timeline", "due", "sheet")) {
            Properties properties = new Properties();
            String name = "/thalweg/phrases/en/" + file + ".properties";
            try (InputStream stream = Objects.requireNonNull(SheetPhrases.class.getResourceAsStream(name), name);
                    Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
                properties.load(reader);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            properties.stringPropertyNames().forEach(key -> patterns.put(key, properties.getProperty(key)));
        }
        return patterns;
    }
}
