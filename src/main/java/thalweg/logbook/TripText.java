package thalweg.logbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.units.Length;
import thalweg.units.Mass;
import thalweg.units.UnitSystem;

/** What belongs to a trip as people type it: one person or rope a line, a time of day. */
public final class TripText {

    /** A comma between two digits is a decimal sign. */
    private static final Pattern BETWEEN = Pattern.compile("\\s*(?:;|,(?!(?<=\\d,)\\d))\\s*");

    /** A name in double quotes, a quote inside doubled; then the rest. */
    private static final Pattern QUOTED = Pattern.compile("\"((?:[^\"]|\"\")+)\"\\s*(?:[,;]\\s*(.*))?");

    private static final Pattern TIME = Pattern.compile("(\\d{1,2})[:.h](\\d{2})\\s*(am|pm)?");

    private TripText() {}

    /**
     * Reads a person: "Ana", "Ana, lead, 62 kg", "Ana, 137 lb"; a name with a comma stands in double quotes.
     *
     * @throws InputException when it cannot be read
     */
    public static Trip.Person person(String line) {
        String text = line.strip();
        Matcher quoted = QUOTED.matcher(text);
        if (quoted.matches()) {
            String name = quoted.group(1).replace("\"\"", "\"").strip();
            return person(text, name, quoted.group(2) == null ? List.of() : parts(quoted.group(2)));
        }
        List<String> parts = parts(text);
        if (parts.get(0).startsWith("\"") || parts.get(0).contains(",")) {
            throw new InputException(Sentence.of(
                    "In \"{0}\" it is not clear where the name ends; write a space after each comma, and a name"
                            + " that holds one in double quotes.",
                    text));
        }
        return person(text, parts.get(0), parts.subList(1, parts.size()));
    }

    private static List<String> parts(String text) {
        return Arrays.asList(BETWEEN.split(text, -1));
    }

    private static Trip.Person person(String line, String name, List<String> about) {
        Optional<Trip.Role> role = Optional.empty();
        Optional<Mass> weight = Optional.empty();
        for (String part : about) {
            Optional<Trip.Role> named = role(part);
            boolean number = !part.isEmpty() && Character.isDigit(part.charAt(0));
            if (named.isEmpty() && !number) {
                throw new InputException(Sentence.of(
                        "In \"{0}\", \"{1}\" is neither a role ({2}) nor a weight such as 62 kg or 137 lb.",
                        line, part, roles()));
            }
            if (named.isPresent() ? role.isPresent() : weight.isPresent()) {
                throw new InputException(
                        number
                                ? Sentence.of("\"{0}\" has two weights; write one person a line.", line)
                                : Sentence.of("\"{0}\" has two roles; write one person a line.", line));
            }
            role = named.isPresent() ? named : role;
            weight = number ? Optional.of(weight(part)) : weight;
        }
        if (name.isEmpty()) {
            throw new InputException(
                    Sentence.of("\"{0}\" has no name; begin with it, as in \"Ana, lead, 62 kg\".", line));
        }
        return new Trip.Person(name, role, weight);
    }

    private static Optional<Trip.Role> role(String word) {
        return Arrays.stream(Trip.Role.values())
                .filter(role -> word(role).equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static String word(Trip.Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    private static String roles() {
        return String.join(
                ", ", Arrays.stream(Trip.Role.values()).map(TripText::word).toList());
    }

    private static Mass weight(String text) {
        if (Character.isDigit(text.charAt(text.length() - 1))) {
            throw new InputException(Sentence.of("The weight \"{0}\" has no unit; write {0} kg or {0} lb.", text));
        }
        long grams = Math.round(Mass.parse(text).kilograms() * 1000);
        if (grams < Trip.LEAST_WEIGHT_G || grams > Trip.MOST_WEIGHT_G) {
            throw new InputException(Sentence.of(
                    "The weight \"{0}\" is not between {1} and {2} kg.",
                    text, Trip.LEAST_WEIGHT_G / 1000, Trip.MOST_WEIGHT_G / 1000));
        }
        return new Mass(grams / 1000.0);
    }

    /** As it is typed: "Ana, lead, 62 kg". */
    public static String print(Trip.Person person, UnitSystem units) {
        StringBuilder out = new StringBuilder(quotedWhereNeeded(person.name()));
        person.role().ifPresent(role -> out.append(", ").append(word(role)));
        person.weight().ifPresent(weight -> out.append(", ").append(weight.print(units)));
        return out.toString();
    }

    private static String quotedWhereNeeded(String name) {
        boolean plain = name.indexOf(',') < 0 && name.indexOf(';') < 0 && !name.startsWith("\"");
        return plain ? name : "\"" + name.replace("\"", "\"\"") + "\"";
    }

    /**
     * Reads a rope: "60 m" or "60 m, 9.5 mm low-stretch"; what stands after the length is its kind.
     *
     * @throws InputException when it cannot be read
     */
    public static Trip.Rope rope(String line) {
        String[] parts = BETWEEN.split(line.strip(), 2);
        long centimetres = Length.parse(parts[0]).inCentimetres();
        if (centimetres < Trip.LEAST_ROPE_CM || centimetres > Trip.MOST_ROPE_CM) {
            throw new InputException(Sentence.of(
                    "The rope \"{0}\" is not between {1} and {2} m long.",
                    parts[0], Trip.LEAST_ROPE_CM / 100, Trip.MOST_ROPE_CM / 100));
        }
        return new Trip.Rope(Length.centimetres(centimetres), parts.length > 1 ? parts[1].strip() : "");
    }

    /** As it is typed: "60 m, 9.5 mm low-stretch". */
    public static String print(Trip.Rope rope, UnitSystem units) {
        return rope.length().print(units) + (rope.kind().isEmpty() ? "" : ", " + rope.kind());
    }

    /**
     * Reads how many sets of ropes leapfrog.
     *
     * @return 1 to {@link Trip#MOST_SETS}
     * @throws InputException when it cannot be read
     */
    public static int ropeSets(String text) {
        if (text.strip().matches("[1-" + Trip.MOST_SETS + "]")) {
            return Integer.parseInt(text.strip());
        }
        throw new InputException(Sentence.of(
                "The number of rope sets \"{0}\" cannot be used; write one from 1 to {1}.",
                text.strip(), Trip.MOST_SETS));
    }

    /**
     * Reads one entry from each line that is not blank.
     *
     * @throws InputException when a line cannot be read, with its number
     */
    public static <T> List<T> lines(String text, Function<String, T> parse) {
        List<T> entries = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                entries.add(line(i + 1, lines.get(i), parse));
            }
        }
        return entries;
    }

    private static <T> T line(int number, String line, Function<String, T> parse) {
        try {
            return parse.apply(line);
        } catch (InputException e) {
            throw new InputException(Sentence.of("Line {0}: {1}", number, e.saying()), e);
        }
    }

    /**
     * Reads a time of day, as "8:30", "17:05" or "8:30 am".
     *
     * @return minutes after midnight, 0 to 1439
     * @throws InputException when it cannot be read
     */
    public static int time(String text) {
        Matcher shape = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (shape.matches()) {
            int hour = Integer.parseInt(shape.group(1));
            int minute = Integer.parseInt(shape.group(2));
            boolean halves = shape.group(3) != null;
            if (minute < 60 && (halves ? hour >= 1 && hour <= 12 : hour < 24)) {
                int counted = halves ? hour % 12 + ("pm".equals(shape.group(3)) ? 12 : 0) : hour;
                return counted * 60 + minute;
            }
        }
        throw new InputException(Sentence.of(
                "The time \"{0}\" does not exist; write hours and minutes, from 0:00 to 23:59.", text.strip()));
    }

    /** As it is typed: "8:30". */
    public static String printTime(int minutes) {
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
