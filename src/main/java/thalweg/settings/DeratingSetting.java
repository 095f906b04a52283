package thalweg.settings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.rig.DeratingKey;

/** Reads the key {@code derating}: shares of a strength that hold for every rig that states none of its own. */
final class DeratingSetting {

    private static final String KEY = "derating";

    private DeratingSetting() {}

    /** The shares that are set, by their words; reasons go to the reader's findings. */
    static Map<String, Double> read(FieldReader in) {
        Map<String, Double> shares = new LinkedHashMap<>();
        in.object(KEY).ifPresent(inner -> {
            for (String word : inner.unasked()) {
                OptionalDouble share = inner.real(word);
                if (DeratingKey.of(word).isEmpty()) {
                    inner.refuse(word, Sentence.of("is no factor; there are: {0}.", DeratingKey.words()));
                } else if (share.isPresent() && !(share.getAsDouble() > 0 && share.getAsDouble() <= 1)) {
                    inner.refuse(word, Sentence.of("is out of range; it should be a number above 0 and at most 1."));
                } else {
                    share.ifPresent(value -> shares.put(word, value));
                }
            }
        });
        return shares;
    }
}
