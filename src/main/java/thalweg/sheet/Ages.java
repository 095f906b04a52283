package thalweg.sheet;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;

/**
 * How long ago something was, in years and months. Where only a month or a year is known, the age is a bound and says
 * which: "at least 5 years" when that time is over, "at most 11 months" while it is not.
 */
public final class Ages {

    private final Phrases phrases;
    private final LocalDate asOf;

    /** @param asOf the day as of which ages are told */
    public Ages(Phrases phrases, LocalDate asOf) {
        this.phrases = phrases;
        this.asOf = asOf;
    }

    /** The date with how long ago it was. */
    public String ago(PartialDate date) {
        return withAge("sheet.age.ago", date);
    }

    /** The date with how old something from then is. */
    public String old(PartialDate date) {
        return withAge("sheet.age.old", date);
    }

    private String withAge(String key, PartialDate date) {
        return date.hasBegunBy(asOf)
                ? phrases.say(key, date.print(), of(date))
                : phrases.say("sheet.age.later", date.print());
    }

    /** The age of something from a date that has begun. */
    String of(PartialDate date) {
        Period least = date.ageAtLeast(asOf);
        if (date.isExact()) {
            return span(least);
        }
        if (least.isZero()) {
            return phrases.say(
                    "sheet.age.most", span(Period.ofMonths(monthsAtMost(date)).normalized()));
        }
        boolean onlyYear = date.month() == 0 && least.getYears() > 0;
        return phrases.say("sheet.age.least", span(onlyYear ? Period.ofYears(least.getYears()) : least));
    }

    /** Months begun since the first day that the date can mean, 1 or more. */
    private int monthsAtMost(PartialDate date) {
        long whole = ChronoUnit.MONTHS.between(date.earliest(), asOf);
        boolean begun = date.earliest().plusMonths(whole).isBefore(asOf);
        return (int) Math.max(1, begun ? whole + 1 : whole);
    }

    private String span(Period period) {
        if (period.getYears() > 0 && period.getMonths() > 0) {
            return phrases.say(
                    "sheet.age.years_and_months",
                    counted("year", period.getYears()),
                    counted("month", period.getMonths()));
        }
        if (period.getYears() > 0) {
            return counted("year", period.getYears());
        }
        if (period.getMonths() > 0) {
            return counted("month", period.getMonths());
        }
        return period.getDays() > 0 ? counted("day", period.getDays()) : phrases.say("sheet.age.today");
    }

    private String counted(String unit, int count) {
        return phrases.count("sheet.age." + unit, count);
    }
}
