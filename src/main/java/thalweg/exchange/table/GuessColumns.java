package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.text.Fold;

/** What the columns of a table may be, by their headings: those of exported tables, or words of a person's language. */
public final class GuessColumns {

    /** The list of words under which headings stand, before the word of the kind of table. */
    public static final String HEADINGS = "heading.";

    /** "Height (m)", "Height [ft]", "height, cm", "height in m". */
    private static final Pattern WITH_UNIT = Pattern.compile(
            "(.*\\S)\\s*(?:[(\\[]\\s*(\\p{L}{1,4})\\.?\\s*[)\\]]|,\\s*(\\p{L}{1,3})|\\s+in\\s+(\\p{L}{1,3}))\\s*",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    /** Exported tables have the longest drop twice: as it is shown under a plain heading, and here as somebody stated it. */
    private static final String STATED = "stated_longest_drop_cm";

    private final TableKind kind;
    private final TableWords words;

    public GuessColumns(TableKind kind, TableWords words) {
        this.kind = kind;
        this.words = words;
    }

    /** The kind whose fields fit most of the headings; empty where no kind fits two of them, or two kinds fit alike. */
    public static Optional<TableKind> kind(List<String> headings, TableWords words) {
        Optional<TableKind> best = Optional.empty();
        long most = 1;
        for (TableKind kind : TableKind.values()) {
            GuessColumns guess = new GuessColumns(kind, words);
            long known = guess.of(headings).stream().filter(Optional::isPresent).count()
                    + headings.stream().filter(kind::worksOut).count();
            if (known > most) {
                most = known;
                best = Optional.of(kind);
            } else if (known == most) {
                best = Optional.empty();
            }
        }
        return best;
    }

    /** A guess for each heading, each field at most once; empty for a heading that says nothing here. */
    public List<Optional<Target>> of(List<String> headings) {
        Set<Field> taken = EnumSet.noneOf(Field.class);
        List<Optional<Target>> guesses = new ArrayList<>();
        boolean stated = headings.contains(STATED);
        for (String heading : headings) {
            Optional<Target> guess = stated && heading.equals("longest_drop_cm")
                    ? Optional.empty()
                    : of(heading).filter(target -> !taken.contains(target.field()));
            guess.ifPresent(target -> taken.add(target.field()));
            guesses.add(guess);
        }
        return guesses;
    }

    private Optional<Target> of(String heading) {
        String word = heading.strip().toLowerCase(Locale.ROOT);
        if (word.equals(STATED) && kind.has(Field.LONGEST_DROP)) {
            return Optional.of(new Target(Field.LONGEST_DROP, "cm"));
        }
        Optional<Target> own = Target.of(word).filter(target -> kind.has(target.field()));
        if (own.isPresent()) {
            return own;
        }
        if (kind.worksOut(word) && !word.equals("longest_drop_cm")) {
            return Optional.empty();
        }
        Optional<Field> plain = field(heading);
        if (plain.isPresent()) {
            return plain.map(Target::of);
        }
        Matcher unit = WITH_UNIT.matcher(heading);
        if (unit.matches()) {
            String name = unit.group(2) != null ? unit.group(2) : unit.group(3) != null ? unit.group(3) : unit.group(4);
            return field(unit.group(1)).map(field -> withUnit(field, name));
        }
        int cut = heading.lastIndexOf('_');
        return cut < 0
                ? Optional.empty()
                : field(heading.substring(0, cut)).map(field -> withUnit(field, heading.substring(cut + 1)));
    }

    private static Target withUnit(Field field, String unit) {
        String folded = Fold.fold(unit);
        return field.shape().units().contains(folded) ? new Target(field, folded) : Target.of(field);
    }

    private Optional<Field> field(String heading) {
        return words.value(HEADINGS + kind.word(), heading).flatMap(Field::of);
    }
}
