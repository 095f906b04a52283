package thalweg.exchange.csv;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import thalweg.place.Position;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.units.Length;

/** How values stand in cells, so that they are read back as they were; what is unknown is an empty cell. */
final class CellText {

    private CellText() {}

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    static String word(Optional<? extends Enum<?>> value) {
        return value.map(CellText::word).orElse("");
    }

    static String date(Optional<PartialDate> date) {
        return date.map(PartialDate::print).orElse("");
    }

    static String centimetres(Optional<Length> length) {
        return of(length, Length::inCentimetres);
    }

    static String number(Optional<Integer> number) {
        return of(number, value -> value);
    }

    static <T> String of(Optional<T> value, Function<T, ?> print) {
        return value.map(print).map(String::valueOf).orElse("");
    }

    static String yes(boolean is) {
        return is ? "yes" : "";
    }

    /** Latitude, longitude and how far off they may be. */
    static List<String> position(Optional<Position> position) {
        return List.of(
                of(position, Position::printLatitude),
                of(position, Position::printLongitude),
                number(position.flatMap(Position::accuracyMetres)));
    }

    static <K extends Enum<K>> String prose(Prose<K> prose, K heading) {
        return prose.under(heading).orElse("");
    }

    /** Several texts: with semicolons between, or on lines of their own where one of them holds a semicolon. */
    static String list(List<String> texts) {
        boolean holdsOne = texts.stream().anyMatch(text -> text.contains(";"));
        return holdsOne ? String.join("\n", texts) + "\n" : String.join("; ", texts);
    }
}
