package thalweg.service;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.text.Language;

/** Reads what is said in a language for the English patterns of sentences that have no key. */
final class LoadSentences {

    private static final int LONGEST = 1000;

    private LoadSentences() {}

    /** Translated patterns by the English one, which {@link thalweg.fault.Sentence} states in the code. */
    static Map<String, String> of(Language language) {
        String resource = "/thalweg/phrases/" + language.word() + "/sentences.json";
        Findings findings = new Findings();
        Map<String, String> sentences = new HashMap<>();
        for (FieldReader one :
                JsonDocument.read(resource, bytes(resource)).reader(findings).objects("sentences")) {
            String english = one.exact("english", LONGEST);
            if (sentences.put(english, one.exact("said", LONGEST)) != null) {
                throw new AssertionError("the sentence \"" + english + "\" stands twice");
            }
        }
        if (!findings.none()) {
            throw new AssertionError(findings.all().get(0).print());
        }
        return sentences;
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = LoadSentences.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new AssertionError(resource + " is part of the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read", e);
        }
    }
}
