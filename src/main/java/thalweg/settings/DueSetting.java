package thalweg.settings;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;

/** Reads the key {@code due}: after how many months parts are due. */
final class DueSetting {

    private static final String KEY = "due";

    private DueSetting() {}

    /** The figures that are set; reasons go to the reader's findings. */
    static Map<DueFigure, Integer> read(FieldReader in) {
        Map<DueFigure, Integer> months = new EnumMap<>(DueFigure.class);
        in.object(KEY).ifPresent(inner -> {
            for (String word : inner.unasked()) {
                var figure = DueFigure.of(word);
                OptionalLong value = inner.whole(word, 1, DueFigure.MOST);
                if (figure.isEmpty()) {
                    inner.refuse(
                            word,
                            Sentence.of(
                                    "is no figure; there are: {0}.",
                                    Arrays.stream(DueFigure.values())
                                            .map(DueFigure::word)
                                            .collect(Collectors.joining(", "))));
                } else {
                    value.ifPresent(number -> months.put(figure.get(), (int) number));
                }
            }
        });
        return months;
    }
}
