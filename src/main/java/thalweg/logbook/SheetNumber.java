package thalweg.logbook;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Hash;
import thalweg.ledger.Uid;

/**
 * What stands on a sheet to tell it from every other: the number counts the sheets of one database in the order in which
 * they were written; the letters after it follow from what the sheet was made from, so that sheet 12 of another database
 * is not taken for this one's.
 *
 * @param number of the sheet in its database, 1 or more
 * @param check six hexadecimal digits; empty where somebody named the number alone
 */
public record SheetNumber(long number, Optional<String> check) {

    private static final int DIGITS = 6;

    private static final Pattern SHAPE = Pattern.compile("(\\d{1,10})(?:-([0-9a-f]{" + DIGITS + "}))?");

    public SheetNumber {
        if (number < 1) {
            throw new IllegalArgumentException("sheets are numbered from 1");
        }
    }

    /**
     * The number of a sheet.
     *
     * @param canyon it is about
     * @param records hash of the records that it was made from
     */
    public static SheetNumber of(long number, Uid canyon, Hash records) {
        String check =
                Hash.of(number + "\n" + canyon.text() + "\n" + records.hex()).hex();
        return new SheetNumber(number, Optional.of(check.substring(0, DIGITS)));
    }

    /**
     * As it stands on a sheet, with or without the letters.
     *
     * @throws InputException when it is no such number
     */
    public static SheetNumber parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!shape.matches() || Long.parseLong(shape.group(1)) < 1) {
            throw new InputException(Sentence.of(
                    "\"{0}\" is no number of a sheet; it stands in the head of the sheet, as 12-4f9ac1, and 12 will do.",
                    text.strip()));
        }
        return new SheetNumber(Long.parseLong(shape.group(1)), Optional.ofNullable(shape.group(2)));
    }

    /** Whether it may be that one: letters that nobody named contradict nothing. */
    public boolean fits(SheetNumber whole) {
        return number == whole.number && (check.isEmpty() || check.equals(whole.check));
    }

    /** "12-4f9ac1". */
    public String print() {
        return number + check.map(letters -> "-" + letters).orElse("");
    }
}
