package thalweg.exchange.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.body.Limits;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.AmericanGrade;
import thalweg.route.AnchorRole;
import thalweg.route.Exposure;
import thalweg.route.FrenchGrade;
import thalweg.route.HoldsAlone;
import thalweg.route.ObstacleKind;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.route.Side;
import thalweg.route.Times;
import thalweg.units.Force;
import thalweg.units.Length;

/** Reads what stands in cells, as people write it, into values of a record's body. */
final class Cells {

    /** Day and month of which only one order is possible, or with points, where the day comes first by common practice. */
    private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");

    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

    private final TableWords words;

    Cells(TableWords words) {
        this.words = words;
    }

    /**
     * The value in a cell that is not blank.
     *
     * @throws InputException when it cannot be read, with what would do
     */
    Json value(Target target, String cell) {
        Field field = target.field();
        String text = cell.strip();
        return switch (field.shape()) {
            case TEXT, LINES -> Json.of(cell);
            case LIST -> Json.texts(list(cell));
            case LENGTH -> Json.of(centimetres(target, text, least(field), most(field)));
            case FORCE -> Json.of(newtons(target, text));
            case MINUTES -> Json.of(Times.minutes(target.unit().isEmpty() ? text : withUnit(text, target.unit())));
            case DATE -> Json.of(date(text).print());
            case WORD -> Json.of(word(field, text));
            case WORDS ->
                Json.texts(Stream.of(text.split("[;,\\n]", -1))
                        .map(String::strip)
                        .filter(one -> !one.isEmpty())
                        .map(one -> word(field, one))
                        .toList());
            case FLAG -> Json.of(flag(text));
            case GRADE ->
                Json.of(
                        field == Field.FRENCH_GRADE
                                ? FrenchGrade.parse(text).print()
                                : AmericanGrade.parse(text).print());
            case UID -> Json.of(uid(text).text());
            case NUMBER -> Json.of(number(text));
            case COORDINATE -> Json.of(text);
        };
    }

    /** Several texts: on lines of their own where there is a line end, else between semicolons. */
    static List<String> list(String cell) {
        String between = cell.contains("\n") ? "\n" : ";";
        return Arrays.stream(cell.split(between, -1))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
    }

    /**
     * A length.
     *
     * @param least [cm]
     * @param most [cm]
     */
    static long centimetres(Target target, String text, long least, long most) {
        String whole = measured(
                target,
                text,
                Sentence.of(
                        "\"{0}\" has no unit; write {0} m or {0} ft, or name the unit in the heading," + " as \"(m)\".",
                        text));
        long centimetres = Length.parse(whole).inCentimetres();
        if (centimetres < least || centimetres > most) {
            throw new InputException(
                    Sentence.of("\"{0}\" is not between {1} and {2} m.", whole, least / 100, most / 100));
        }
        return centimetres;
    }

    private static long newtons(Target target, String text) {
        String whole = measured(
                target,
                text,
                Sentence.of(
                        "\"{0}\" has no unit; write {0} kN or lbf, or name the unit in the heading, as" + " \"(kN)\".",
                        text));
        long newtons = Math.round(Force.parse(whole).newtons());
        if (newtons < 1 || newtons > Limits.STRENGTH_N) {
            throw new InputException(
                    Sentence.of("\"{0}\" is not between 0 and {1} kN.", whole, Limits.STRENGTH_N / 1000));
        }
        return newtons;
    }

    /** The text with its unit; a bare number takes that of the column, and is refused where it has none. */
    private static String measured(Target target, String text, Sentence bare) {
        boolean isBare = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
        if (!isBare || (target.unit().isEmpty() && text.matches("[+-]?0+"))) {
            return text;
        }
        if (target.unit().isEmpty()) {
            throw new InputException(bare);
        }
        return withUnit(text, target.unit());
    }

    private static String withUnit(String text, String unit) {
        return text.matches("[-+0-9., ]+") ? text + " " + unit : text;
    }

    private static long least(Field field) {
        return field == Field.RIGHT || field == Field.UP || field == Field.OUT ? -Limits.PLACE_CM : 0;
    }

    private static long most(Field field) {
        return switch (field) {
            case RIGHT, UP, OUT -> Limits.PLACE_CM;
            case DISTANCE, ACCURACY, PLACE_ACCURACY -> Limits.DISTANCE_CM;
            case ROPE_NEEDED -> Limits.ROPE_CM;
            default -> Limits.HEIGHT_CM;
        };
    }

    /** A date: as files have it, or as people write days. */
    static PartialDate date(String text) {
        Matcher slashes = SLASHES.matcher(text);
        if (slashes.matches()) {
            int one = Integer.parseInt(slashes.group(1));
            int other = Integer.parseInt(slashes.group(2));
            String year = slashes.group(3);
            if (one <= 12 && other <= 12 && one != other) {
                throw new InputException(Sentence.of(
                        "The date \"{0}\" can be read in two ways; write {1} or {2}.",
                        text, day(year, one, other), day(year, other, one)));
            }
            return PartialDate.parse(one > 12 ? day(year, other, one) : day(year, one, other));
        }
        Matcher points = POINTS.matcher(text);
        return PartialDate.parse(
                points.matches()
                        ? day(points.group(3), Integer.parseInt(points.group(2)), Integer.parseInt(points.group(1)))
                        : text);
    }

    private static String day(String year, int month, int day) {
        return String.format(Locale.ROOT, "%s-%02d-%02d", year, month, day);
    }

    private String word(Field field, String text) {
        return words.value(field.list(), text)
                .orElseThrow(() -> new InputException(
                        Sentence.of("\"{0}\" is none of the words that are known here: {1}.", text, known(field))));
    }

    /** Whether a word stands for a part that was looked for in vain. */
    boolean isNotSeen(String text) {
        return words.value("condition.not", text).isPresent();
    }

    private static String known(Field field) {
        return Arrays.stream(list(field))
                .map(value -> value.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }

    private static Enum<?>[] list(Field field) {
        return switch (field.list()) {
            case "obstacle" -> ObstacleKind.values();
            case "side" -> Side.values();
            case "exposure" -> Exposure.values();
            case "role" -> AnchorRole.values();
            case "part" -> PartKind.values();
            case "holds" -> HoldsAlone.values();
            case "condition" -> Condition.values();
            case "water" -> WaterLevel.values();
            case "work" -> Work.values();
            default -> throw new IllegalArgumentException(field + " has no words");
        };
    }

    boolean flag(String text) {
        Optional<String> said = words.value("flag", text);
        return said.orElseThrow(() ->
                        new InputException(Sentence.of("\"{0}\" is neither yes nor no; write one of the two.", text)))
                .equals("yes");
    }

    static Uid uid(String text) {
        return Uid.parse(text)
                .orElseThrow(() -> new InputException(Sentence.of(
                        "\"{0}\" is no id; it should be 32 hexadecimal digits in five groups, or the cell empty.",
                        text)));
    }

    static int number(String text) {
        if (!text.matches("[0-9]{1,4}") || Integer.parseInt(text) < 1) {
            throw new InputException(Sentence.of(
                    "\"{0}\" is no number of a place; it should be 1 for the first of the line, and so on.", text));
        }
        return Integer.parseInt(text);
    }
}
