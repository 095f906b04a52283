package thalweg.settings;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;

/** Reads an object of figures for the plan of a trip, as the settings and the file of a trip have it. */
public final class TripFigures {

    private TripFigures() {}

    /**
     * The figures that are stated; reasons go to the reader's findings.
     *
     * @param key of the object, which may be missing
     */
    public static Map<TripFigure, Double> read(FieldReader in, String key) {
        Map<TripFigure, Double> stated = new EnumMap<>(TripFigure.class);
        in.object(key).ifPresent(inner -> {
            for (String word : inner.unasked()) {
                var figure = TripFigure.of(word);
                OptionalDouble value = inner.real(word);
                if (figure.isEmpty()) {
                    inner.refuse(word, Sentence.of("is no figure; there are: {0}.", TripFigure.words()));
                } else if (value.isPresent()) {
                    stated(inner, figure.get(), value.getAsDouble(), stated);
                }
            }
        });
        return stated;
    }

    private static void stated(FieldReader in, TripFigure figure, double value, Map<TripFigure, Double> stated) {
        if (figure.believes(value)) {
            stated.put(figure, value);
        } else {
            in.refuse(
                    figure.word(),
                    figure == TripFigure.RESERVE_LINKS
                            ? Sentence.of(
                                    "is out of range; it should be {0} to {1}, a whole number",
                                    plain(figure.least()), plain(figure.most()))
                            : Sentence.of(
                                    "is out of range; it should be {0} to {1}",
                                    plain(figure.least()), plain(figure.most())));
        }
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString(Math.round(number)) : Double.toString(number);
    }
}
