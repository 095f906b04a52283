package thalweg.settings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.text.Fold;
import thalweg.text.Language;
import thalweg.text.Phrases;

/**
 * What a person has set, or what the program brings along where they have not.
 *
 * @param loads offered by name, in order; may be empty
 * @param derating shares of a strength in place of the program's, for rigs that state none, by the words that a rig file has
 * @param due after how many months parts are due, where that is not the standard
 * @param trip figures for the plan of a trip, where they are not the standard
 * @param keeper who signs what is entered; empty where nobody said, so that the name of the account stands in
 * @param theme how the screen is coloured; empty where nobody said
 * @param language in which the program speaks; empty where nobody said
 */
public record Settings(
        List<LoadPreset> loads,
        Map<String, Double> derating,
        Map<DueFigure, Integer> due,
        Map<TripFigure, Double> trip,
        Optional<String> keeper,
        Optional<Theme> theme,
        Optional<Language> language) {

    public Settings {
        loads = List.copyOf(loads);
        derating = Collections.unmodifiableMap(new LinkedHashMap<>(derating));
        due = Map.copyOf(due);
        trip = Map.copyOf(trip);
    }

    /** Loads to choose from, and nothing else that is set. */
    public Settings(List<LoadPreset> loads) {
        this(loads, Map.of(), Map.of(), Map.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What holds where nothing was set. */
    public static Settings standard(Phrases phrases) {
        return new Settings(StandardLoads.of(phrases));
    }

    /**
     * The load of that name, or the one whose name has that part in it; accents and case count for nothing.
     *
     * @throws InputException when none or several fit, with those there are
     */
    public LoadPreset load(String words) {
        List<LoadPreset> fit = fitting(words);
        if (fit.size() == 1) {
            return fit.get(0);
        }
        if (loads.isEmpty()) {
            throw new InputException(Sentence.of(
                    "There is no load \"{0}\", for your settings name none; see src/docs/settings.md.", words));
        }
        List<LoadPreset> shown = fit.isEmpty() ? loads : fit;
        String known = shown.stream().map(load -> "\"" + load.name() + "\"").collect(Collectors.joining(", "));
        throw new InputException(
                fit.isEmpty()
                        ? Sentence.of("There is no load \"{0}\"; there are {1}.", words, known)
                        : Sentence.of("Several loads fit \"{0}\"; they are {1}.", words, known));
    }

    /** The loads of that name, or else those whose name has that part in it; accents and case count for nothing. */
    public List<LoadPreset> fitting(String words) {
        String wanted = Fold.fold(words);
        List<LoadPreset> exact = loads.stream()
                .filter(load -> Fold.fold(load.name()).equals(wanted))
                .toList();
        return !exact.isEmpty() || wanted.isBlank()
                ? exact
                : loads.stream()
                        .filter(load -> Fold.fold(load.name()).contains(wanted))
                        .toList();
    }

    /** The same with other loads to choose from. */
    public Settings withLoads(List<LoadPreset> others) {
        return new Settings(others, derating, due, trip, keeper, theme, language);
    }

    /** The same with other shares of a strength. */
    public Settings withDerating(Map<String, Double> shares) {
        return new Settings(loads, shares, due, trip, keeper, theme, language);
    }

    /** The same with other figures for what is due. */
    public Settings withDue(Map<DueFigure, Integer> months) {
        return new Settings(loads, derating, months, trip, keeper, theme, language);
    }

    /** The same with other figures for the plan of a trip. */
    public Settings withTrip(Map<TripFigure, Double> figures) {
        return new Settings(loads, derating, due, figures, keeper, theme, language);
    }

    /** The same, signed by that name. */
    public Settings withKeeper(Optional<String> name) {
        return new Settings(loads, derating, due, trip, name, theme, language);
    }

    /** The same, coloured in that way. */
    public Settings withTheme(Optional<Theme> other) {
        return new Settings(loads, derating, due, trip, keeper, other, language);
    }

    /** The same in that language. */
    public Settings withLanguage(Optional<Language> other) {
        return new Settings(loads, derating, due, trip, keeper, theme, other);
    }

    /** After how long parts are due by that figure [months]. */
    public int months(DueFigure figure) {
        return due.getOrDefault(figure, figure.standard());
    }

    /** A figure for the plan of a trip, in its unit. */
    public double figure(TripFigure figure) {
        return trip.getOrDefault(figure, figure.standard());
    }
}
