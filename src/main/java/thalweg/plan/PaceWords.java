package thalweg.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.route.PartialDate;
import thalweg.settings.TripFigure;
import thalweg.text.Phrases;

/** How own trips went against the figures, in words. */
public final class PaceWords {

    /** The share of a normal distribution between the two that many standard deviations off is eight in ten. */
    private static final double EIGHT_IN_TEN = 1.2816;

    private final Phrases phrases;

    private PaceWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /** What a plan says of it; nothing where nobody asked. */
    static List<String> of(Plan plan, Phrases phrases) {
        return plan.pace()
                .map(pace -> new PaceWords(phrases).lines(pace, plan.figure(TripFigure.SPREAD)))
                .orElse(List.of());
    }

    /** One sentence on a trip that was done; empty where its noted times tell nothing. */
    public static Optional<String> of(PacedTrip trip, Phrases phrases) {
        return trip.factor()
                .map(factor -> phrases.say(
                        "pace.trip",
                        times(factor),
                        phrases.count("pace.legs", trip.ratios().size())));
    }

    private List<String> lines(OwnPace pace, double usual) {
        List<String> lines = new ArrayList<>();
        String legs = phrases.count("pace.legs", pace.legs());
        String trips = phrases.count("pace.trips", pace.telling());
        lines.add(pace.factor()
                .map(factor -> {
                    double off = Math.exp(EIGHT_IN_TEN * pace.spread(usual).orElseThrow());
                    return phrases.say(
                            "pace.own", times(factor), legs, trips, times(factor / off), times(factor * off));
                })
                .orElseGet(() -> phrases.say("pace.too_few", legs, trips, OwnPace.FEWEST_LEGS)));
        if (pace.factor().isPresent() && !pace.knowsDays()) {
            lines.add(phrases.say("pace.few_days", OwnPace.FEWEST_TRIPS));
        }
        pace.trips().forEach(trip -> lines.add(line(trip)));
        if (pace.leftOut() > 0) {
            lines.add(phrases.count("pace.left_out", pace.leftOut()));
        }
        return lines;
    }

    private String line(PacedTrip paced) {
        String name = paced.trip().name().isEmpty()
                ? phrases.say("trip.unnamed")
                : paced.trip().name();
        String day = paced.trip().on().map(PartialDate::print).orElse(phrases.say("trips.no_day"));
        return phrases.say("pace.of", name, day, of(paced, phrases).orElse(phrases.say("pace.none")));
    }

    private static String times(double factor) {
        return String.format(Locale.ROOT, "%.2f", factor);
    }
}
