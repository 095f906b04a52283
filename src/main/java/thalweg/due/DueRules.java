package thalweg.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import thalweg.logbook.Condition;
import thalweg.logbook.DueCandidates;
import thalweg.logbook.PartState;
import thalweg.route.Exposure;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.settings.DueFigure;
import thalweg.settings.Settings;

/**
 * When parts are due, by what they are, where they are and how they were found last.
 *
 * <p>A date of which only the month or the year is known counts as its first day: what may be old is treated as old.
 */
public final class DueRules {

    private static final Set<PartKind> TEXTILE =
            EnumSet.of(PartKind.WEBBING, PartKind.CORD, PartKind.SLING, PartKind.ROPE);

    /** Months are counted forward in the rules, and a day that a month lacks becomes its last [days]. */
    private static final int SHORTEST_MONTH_LACKS = 3;

    private final Settings settings;
    private final LocalDate today;

    /**
     * @param settings whose figures hold
     * @param today from which confidence is judged
     */
    public DueRules(Settings settings, LocalDate today) {
        this.settings = settings;
        this.today = today;
    }

    /** Whether a part is made of textile, which ages even if nobody uses it. */
    public static boolean isTextile(PartKind kind) {
        return TEXTILE.contains(kind);
    }

    /**
     * What is to be done with a part, the most urgent first; never empty.
     *
     * @param replaced since it was placed, as far as anybody can tell
     * @param exposure of its station; unknown counts as dry
     */
    public List<Due> of(Part part, PartState state, Optional<PartialDate> replaced, Optional<Exposure> exposure) {
        Optional<Condition> condition = state.condition();
        List<Due> all = new ArrayList<>();
        if (condition.equals(Optional.of(Condition.GONE))) {
            return List.of(new Due(DueReason.GONE, seen(state), 0));
        }
        if (condition.equals(Optional.of(Condition.UNSAFE))) {
            all.add(new Due(DueReason.UNSAFE, seen(state), 0));
        }
        all.add(look(state, exposure));
        if (isTextile(part.kind())) {
            all.add(textile(replaced.or(part::placed)));
        }
        all.sort(Due.BY_URGENCY);
        return List.copyOf(all);
    }

    /**
     * Which parts may be due within some days from today, or be textile of unknown age.
     *
     * @param days 0 or more
     */
    public DueCandidates candidates(int days) {
        LocalDate last = today.plusDays(days);
        int look = IntStream.of(
                        settings.months(DueFigure.EXAMINED),
                        settings.months(DueFigure.MARINE),
                        settings.months(DueFigure.WET))
                .min()
                .orElseThrow();
        return new DueCandidates(
                last.minusMonths(look).plusDays(SHORTEST_MONTH_LACKS),
                last.minusMonths(settings.months(DueFigure.TEXTILE)).plusDays(SHORTEST_MONTH_LACKS),
                TEXTILE);
    }

    /** How far the last look at a part can still be relied on. */
    public Confidence confidence(PartState state, Optional<Exposure> exposure) {
        return Confidence.of(state, settings.months(figure(reason(state, exposure))), today);
    }

    private Due look(PartState state, Optional<Exposure> exposure) {
        DueReason reason = reason(state, exposure);
        int months = settings.months(figure(reason));
        Optional<LocalDate> due = seen(state).map(day -> day.plusMonths(months));
        return due.isEmpty() ? new Due(DueReason.NEVER_SEEN, due, 0) : new Due(reason, due, months);
    }

    /** The reason that asks for a look soonest; among equals the first. */
    private DueReason reason(PartState state, Optional<Exposure> exposure) {
        List<DueReason> reasons = new ArrayList<>();
        Optional<Condition> condition = state.condition();
        if (condition.filter(found -> found.isWorseThan(Condition.WORN)).isPresent()) {
            reasons.add(DueReason.DOUBTFUL);
        }
        if (state.contradictory()) {
            reasons.add(DueReason.DISAGREE);
        }
        if (condition.equals(Optional.of(Condition.WORN))) {
            reasons.add(DueReason.WORN);
        }
        if (exposure.equals(Optional.of(Exposure.MARINE))) {
            reasons.add(DueReason.MARINE);
        }
        if (exposure.equals(Optional.of(Exposure.WET))) {
            reasons.add(DueReason.WET);
        }
        DueReason soonest = DueReason.USUAL;
        for (DueReason one : reasons) {
            soonest = settings.months(figure(one)) < settings.months(figure(soonest)) ? one : soonest;
        }
        return soonest;
    }

    private static DueFigure figure(DueReason reason) {
        return switch (reason) {
            case DOUBTFUL, DISAGREE -> DueFigure.DOUBTFUL;
            case WORN -> DueFigure.WORN;
            case MARINE -> DueFigure.MARINE;
            case WET -> DueFigure.WET;
            case TEXTILE, AGE_UNKNOWN -> DueFigure.TEXTILE;
            case GONE, UNSAFE, NEVER_SEEN, USUAL -> DueFigure.EXAMINED;
        };
    }

    private Due textile(Optional<PartialDate> placed) {
        int months = settings.months(DueFigure.TEXTILE);
        return placed.map(day ->
                        new Due(DueReason.TEXTILE, Optional.of(day.earliest().plusMonths(months)), months))
                .orElseGet(() -> new Due(DueReason.AGE_UNKNOWN, Optional.empty(), months));
    }

    private static Optional<LocalDate> seen(PartState state) {
        return state.seenOn().map(PartialDate::earliest);
    }
}
