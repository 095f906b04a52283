package thalweg.route;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The Roman numbers I to VI, as gradings use them. */
final class Roman {

    private static final List<String> NUMBERS = List.of("I", "II", "III", "IV", "V", "VI");

    private Roman() {}

    static Optional<Integer> read(String text) {
        int at = NUMBERS.indexOf(text.toUpperCase(Locale.ROOT));
        return at < 0 ? Optional.empty() : Optional.of(at + 1);
    }

    static String write(int number) {
        return NUMBERS.get(number - 1);
    }
}
