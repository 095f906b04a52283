package thalweg.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.rig.AgeShare;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.TextileAge;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.text.Fold;

/**
 * What published tests let one expect of the strength of a textile part that stays at its anchor: an estimate from its age,
 * and unknown where nothing was tested.
 *
 * @param fibre that its material names; empty where it names none that was tested
 * @param years since it was placed or replaced [years]; a date of which only the month or the year is known counts as its
 *     first day; empty where nobody entered one
 * @param now what is left; empty without fibre or age
 * @param later the same after each whole year from 0, as far as something is known and until beyond today
 */
public record ExpectedStrength(
        Optional<Fibre> fibre, OptionalDouble years, Optional<AgeShare> now, List<AfterYears> later) {

    private static final double DAYS_A_YEAR = 365.25;

    /** Beyond it nothing is published of any fibre [years]. */
    private static final int MOST_YEARS = 6;

    public ExpectedStrength {
        later = List.copyOf(later);
    }

    /** What is left after so many years. */
    public record AfterYears(int years, AgeShare share) {}

    /**
     * What may be expected of a part; empty for one that is not textile.
     *
     * @param replaced since it was placed, as far as anybody can tell
     */
    public static Optional<ExpectedStrength> of(Part part, Optional<PartialDate> replaced, LocalDate today) {
        if (!DueRules.isTextile(part.kind())) {
            return Optional.empty();
        }
        Optional<Fibre> fibre = fibre(part.hardware().material());
        OptionalDouble years = replaced.or(part::placed)
                .map(day ->
                        OptionalDouble.of(Math.max(0, ChronoUnit.DAYS.between(day.earliest(), today) / DAYS_A_YEAR)))
                .orElse(OptionalDouble.empty());
        Optional<AgeShare> now = fibre.isPresent() && years.isPresent()
                ? Optional.of(TextileAge.of(fibre.get(), Kept.OUTDOORS, years.getAsDouble()))
                : Optional.empty();
        List<AfterYears> later = new ArrayList<>();
        fibre.ifPresent(known -> {
            for (int year = 0; year <= MOST_YEARS; year++) {
                later.add(new AfterYears(year, TextileAge.of(known, Kept.OUTDOORS, year)));
            }
        });
        return Optional.of(new ExpectedStrength(fibre, years, now, later));
    }

    /** By the words for a fibre that is entered as the material; two of them are none that was tested. */
    static Optional<Fibre> fibre(String material) {
        String words = Fold.fold(material).toLowerCase(Locale.ROOT);
        List<Fibre> named = new ArrayList<>();
        if (words.contains("nylon") || words.contains("polyamid")) {
            named.add(Fibre.NYLON);
        }
        if (words.contains("polyester")) {
            named.add(Fibre.POLYESTER);
        }
        if (words.contains("uhmwpe") || words.contains("hmpe") || words.contains("polyethylen")) {
            named.add(Fibre.UHMWPE);
        }
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }
}
