package thalweg.logbook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.route.Times;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/**
 * What canyons can be chosen by that has an order: levels of the gradings, lengths, times, conditions. Each is a whole
 * number inside, so that one way of asking serves all.
 */
public enum CanyonMeasure {
    /** French v, 1 to 7. */
    VERTICAL("vertical grade", Bare.EXACTLY, new Levels(1, numbered("v", 7), digits(7))),
    /** French a, 1 to 7. */
    AQUATIC("aquatic grade", Bare.EXACTLY, new Levels(1, numbered("a", 7), digits(7))),
    /** French commitment, I to VI as 1 to 6. */
    COMMITMENT("commitment", Bare.EXACTLY, new Levels(1, roman(), digits(6))),
    /** American class, 1 to 4. */
    TECHNICAL("class", Bare.EXACTLY, new Levels(1, digits(4), digits(4))),
    /** American water: A is 0, B 1, C1 to C4 are 2 to 5; C alone may be any of the last four. */
    WATER("water", Bare.EXACTLY, new Waters()),
    /** American time, I to VI as 1 to 6. */
    TIME_GRADE("time grade", Bare.EXACTLY, new Levels(1, roman(), digits(6))),
    /** American risk: 0 where the grade names none, R is 1, X 2. */
    RISK("risk", Bare.EXACTLY, new Levels(0, List.of("none", "R", "X"), List.of("-", "R", "X"))),
    /** The longest drop [cm]. */
    LONGEST_DROP("longest drop", Bare.AT_MOST, new Lengths()),
    /** Approach, descent and exit together [min]. */
    MINUTES("time", Bare.AT_MOST, new Minutes()),
    /** The worst condition of any part, by its severity. */
    WORST("worst condition", Bare.AT_LEAST, new Levels(0, conditions(), conditions()));

    /** What one value by itself asks for. */
    private enum Bare {
        EXACTLY,
        AT_MOST,
        AT_LEAST
    }

    /** How the values of a measure are written. */
    private interface Scale {
        /** The numbers that a value stands for: one, but for values that are less than exact. */
        Span read(String text);

        String print(long number, UnitSystem units);

        /** How values are written, for a sentence. */
        Sentence usage();
    }

    private final String noun;
    private final Bare bare;

    // Every scale is a record of this file that holds numbers and lists that cannot change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Scale scale;

    CanyonMeasure(String noun, Bare bare, Scale scale) {
        this.noun = noun;
        this.bare = bare;
        this.scale = scale;
    }

    /**
     * Reads what is wanted: "3..5", "3.." for at least, "..5" for at most. One value alone means exactly that level; of a
     * drop and a time at most, of a condition that or a worse one.
     *
     * @param text may be blank, which asks for nothing
     * @throws InputException when it cannot be read, with what would do
     */
    public Span read(String text) {
        String asked = text.strip();
        if (asked.isEmpty()) {
            return Span.ANY;
        }
        int dots = asked.indexOf("..");
        if (dots < 0) {
            Span value = value(asked);
            return switch (bare) {
                case EXACTLY -> value;
                case AT_MOST -> new Span(OptionalLong.empty(), value.to());
                case AT_LEAST -> new Span(value.from(), OptionalLong.empty());
            };
        }
        String left = asked.substring(0, dots).strip();
        String right = asked.substring(dots + 2).strip();
        OptionalLong from = left.isEmpty() ? OptionalLong.empty() : value(left).from();
        OptionalLong to = right.isEmpty() ? OptionalLong.empty() : value(right).to();
        if (from.isEmpty() && to.isEmpty()) {
            throw unreadable(asked);
        }
        if (from.isPresent() && to.isPresent() && from.getAsLong() > to.getAsLong()) {
            throw new InputException(Sentence.of(
                    "The {0} \"{1}\" ends before it begins; write the smaller first.", Sentence.word(noun), asked));
        }
        return new Span(from, to);
    }

    private Span value(String text) {
        try {
            return scale.read(text);
        } catch (IllegalArgumentException e) {
            throw unreadable(text);
        }
    }

    private InputException unreadable(String text) {
        String shown = text.length() > 30 ? text.substring(0, 30) + "..." : text;
        return new InputException(Sentence.of(
                "The {0} \"{1}\" cannot be read; write {2}, and FROM..TO, FROM.. or ..TO for more than one.",
                Sentence.word(noun), shown, scale.usage()));
    }

    /** What is wanted, as it is read. */
    public String print(Span wanted, UnitSystem units) {
        if (wanted.isAny()) {
            return "";
        }
        boolean one = wanted.from().isPresent() && wanted.from().equals(wanted.to()) && bare == Bare.EXACTLY;
        return one ? end(wanted.from(), units) : end(wanted.from(), units) + ".." + end(wanted.to(), units);
    }

    private String end(OptionalLong number, UnitSystem units) {
        return number.isPresent() ? print(number.getAsLong(), units) : "";
    }

    /** One number in the notation of the measure. */
    public String print(long number, UnitSystem units) {
        return scale.print(number, units);
    }

    private static List<String> numbered(String before, int most) {
        return IntStream.rangeClosed(1, most).mapToObj(i -> before + i).toList();
    }

    private static List<String> digits(int most) {
        return numbered("", most);
    }

    private static List<String> roman() {
        return List.of("I", "II", "III", "IV", "V", "VI");
    }

    private static List<String> conditions() {
        return Arrays.stream(Condition.values())
                .map(condition -> condition.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Levels by name, one number after the other; each has a second name by which it is read too. */
    private record Levels(int first, List<String> names, List<String> others) implements Scale {

        @Override
        public Span read(String text) {
            for (int i = 0; i < names.size(); i++) {
                if (names.get(i).equalsIgnoreCase(text) || others.get(i).equalsIgnoreCase(text)) {
                    return Span.between(first + i, first + i);
                }
            }
            throw new IllegalArgumentException("no such level");
        }

        @Override
        public String print(long number, UnitSystem units) {
            return names.get((int) number - first);
        }

        @Override
        public Sentence usage() {
            return Sentence.plain(String.join(", ", names));
        }
    }

    private record Waters() implements Scale {
        private static final Levels EXACT =
                new Levels(0, List.of("A", "B", "C1", "C2", "C3", "C4"), List.of("A", "B", "C1", "C2", "C3", "C4"));

        @Override
        public Span read(String text) {
            return text.equalsIgnoreCase("C") ? Span.between(2, 5) : EXACT.read(text);
        }

        @Override
        public String print(long number, UnitSystem units) {
            return EXACT.print(number, units);
        }

        @Override
        public Sentence usage() {
            return Sentence.of("{0} or C for any of the last four", EXACT.usage());
        }
    }

    private record Lengths() implements Scale {
        @Override
        public Span read(String text) {
            long centimetres = Length.parse(text).inCentimetres();
            if (centimetres < 0) {
                throw new IllegalArgumentException("below zero");
            }
            return Span.between(centimetres, centimetres);
        }

        @Override
        public String print(long number, UnitSystem units) {
            return Length.centimetres(number).print(units);
        }

        @Override
        public Sentence usage() {
            return Sentence.of("a length such as 30 m or 100 ft");
        }
    }

    private record Minutes() implements Scale {
        @Override
        public Span read(String text) {
            long minutes = Times.minutes(text);
            return Span.between(minutes, minutes);
        }

        @Override
        public String print(long number, UnitSystem units) {
            return String.format(Locale.ROOT, "%d:%02d", number / 60, number % 60);
        }

        @Override
        public Sentence usage() {
            return Sentence.of("minutes such as 90 or hours and minutes such as 1:30");
        }
    }
}
