package thalweg.route;

import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * A day, or only a month or a year where no more is known.
 *
 * @param year 1800 to 9999
 * @param month 1 to 12, or 0 where only the year is known
 * @param day 1 to 31, or 0 where only the month is known
 */
public record PartialDate(int year, int month, int day) {

    /** From early to late by the last day a date can mean; of those with the same last day the exact one is later. */
    public static final Comparator<PartialDate> BY_LAST_DAY =
            Comparator.comparing(PartialDate::latest).thenComparing(PartialDate::print);

    private static final Pattern SHAPE = Pattern.compile("(\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?");

    /** Earlier years are taken for slips of the keys even of an old tree or piton; a decision, there is no source. */
    private static final int EARLIEST = 1800;

    /**
     * The year from which on a day is believed of what people see and do here: inspections, rounds, notes, trips. What is
     * looked at may be older, a tree or an old piton, so that parts placed go back as far as dates do. A decision, there is
     * no source: nobody alive has looked at an anchor before.
     */
    public static final int EARLIEST_SEEN = 1900;

    private static final Sentence WRITE = Sentence.of("; write a day, month or year as 2019-06-14, 2019-06 or 2019.");

    public PartialDate {
        if (!exists(year, month, day)) {
            throw new IllegalArgumentException("no such date: " + year + "-" + month + "-" + day);
        }
    }

    /** That day. */
    public static PartialDate of(LocalDate date) {
        return new PartialDate(date.getYear(), date.getMonthValue(), date.getDayOfMonth());
    }

    /**
     * Reads "2019-06-14", "2019-06" or "2019".
     *
     * @throws InputException when it is no date, saying whether it is too early, does not exist or cannot be read
     */
    public static PartialDate parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (shape.matches()) {
            int year = Integer.parseInt(shape.group(1));
            int month = shape.group(2) == null ? 0 : Integer.parseInt(shape.group(2));
            int day = shape.group(3) == null ? 0 : Integer.parseInt(shape.group(3));
            boolean named = (shape.group(2) == null || month > 0) && (shape.group(3) == null || day > 0);
            if (named && exists(year, month, day)) {
                return new PartialDate(year, month, day);
            }
        }
        throw new InputException(Sentence.of("The date \"{0}\" {1}{2}", shown(text.strip()), wrong(shape), WRITE));
    }

    private static String shown(String text) {
        return text.length() > 30 ? text.substring(0, 30) + "..." : text;
    }

    private static Sentence wrong(Matcher shape) {
        if (!shape.matches()) {
            return Sentence.of("cannot be read");
        }
        return Integer.parseInt(shape.group(1)) < EARLIEST
                ? Sentence.of("lies before {0}", EARLIEST)
                : Sentence.of("does not exist");
    }

    /** Why somebody cannot have seen or done anything then, as the end of a sentence; empty where it is believed. */
    public Optional<Sentence> tooEarlyToBeSeen() {
        return year < EARLIEST_SEEN ? Optional.of(Sentence.of("lies before {0}", EARLIEST_SEEN)) : Optional.empty();
    }

    private static boolean exists(int year, int month, int day) {
        if (year < EARLIEST || year > 9999 || month < 0 || month > 12 || day < 0 || (month == 0 && day > 0)) {
            return false;
        }
        return day == 0 || day <= YearMonth.of(year, month).lengthOfMonth();
    }

    /** The first day it can mean. */
    public LocalDate earliest() {
        return LocalDate.of(year, Math.max(1, month), Math.max(1, day));
    }

    /** The last day it can mean. */
    public LocalDate latest() {
        if (month == 0) {
            return LocalDate.of(year, 12, 31);
        }
        return day == 0 ? YearMonth.of(year, month).atEndOfMonth() : LocalDate.of(year, month, day);
    }

    /** Whether the day itself is known. */
    public boolean isExact() {
        return day > 0;
    }

    /** Whether some day it can mean has come by then. */
    public boolean hasBegunBy(LocalDate today) {
        return !earliest().isAfter(today);
    }

    /** The least age today in whole years and months, zero where it may be today or later. */
    public Period ageAtLeast(LocalDate today) {
        return latest().isBefore(today) ? Period.between(latest(), today) : Period.ZERO;
    }

    /** As it is stored and shown: "2019-06-14", "2019-06", "2019". */
    public String print() {
        if (month == 0) {
            return String.format(Locale.ROOT, "%04d", year);
        }
        return day == 0
                ? String.format(Locale.ROOT, "%04d-%02d", year, month)
                : String.format(Locale.ROOT, "%04d-%02d-%02d", year, month, day);
    }
}
