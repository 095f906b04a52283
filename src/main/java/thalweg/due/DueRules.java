package thalweg.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thalweg.logbook.Condition;
import thalweg.logbook.DueCandidates;
import thalweg.logbook.LookGroup;
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
            Arrays.stream(PartKind.values()).filter(PartKind::isTextile).collect(Collectors.toUnmodifiableSet());

    /** Months are counted forward in the rules, and a day that a month lacks becomes its last [days]. */
    private static final int SHORTEST_MONTH_LACKS = 3;

    /** After every day of the records; its text sorts after theirs. */
    private static final LocalDate LAST_DAY = LocalDate.of(9999, 12, 31);

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
        return kind.isTextile();
    }

    /**
     * What is to be done with a part, the most urgent first; never empty.
     *
     * @param replaced since it was placed, as far as anybody can tell
     * @param exposure of its station; unknown counts as dry
     */
    public List<Due> of(Part part, PartState state, Optional<PartialDate> replaced, Optional<Exposure> exposure) {
        Optional<Due> mend = mend(state);
        if (mend.filter(due -> due.reason() == DueReason.GONE).isPresent()) {
            return List.of(mend.get());
        }
        List<Due> all = new ArrayList<>(mend.stream().toList());
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

    /**
     * What is due first of a part of that group, its age aside.
     *
     * @param seen when; empty where nobody has seen it
     */
    public Due first(LookGroup group, Optional<LocalDate> seen) {
        PartState state = group.seen(seen);
        return mend(state).orElseGet(() -> look(state, group.exposure()));
    }

    /**
     * The last day on which a part of that group may have been seen and be due within some days from today.
     *
     * @param days 0 or more
     */
    public LocalDate seenBy(LookGroup group, int days) {
        return mend(group.seen(Optional.of(today)))
                .map(due -> LAST_DAY)
                .orElseGet(() -> before(
                        settings.months(figure(reason(group.seen(Optional.of(today)), group.exposure()))), days));
    }

    /**
     * The last day since which textile may be there and be due within some days from today.
     *
     * @param days 0 or more
     */
    public LocalDate placedBy(int days) {
        return before(settings.months(DueFigure.TEXTILE), days);
    }

    /** When textile is due that is there since that day. */
    public Due textile(LocalDate since) {
        return new Due(
                DueReason.TEXTILE,
                Optional.of(since.plusMonths(settings.months(DueFigure.TEXTILE))),
                settings.months(DueFigure.TEXTILE));
    }

    /** The last day that lies so many months and more before the last that counts; short months make it later than it seems. */
    private LocalDate before(int months, int days) {
        LocalDate last = today.plusDays(days);
        LocalDate day = last.minusMonths(months);
        while (!day.plusDays(1).plusMonths(months).isAfter(last)) {
            day = day.plusDays(1);
        }
        return day;
    }

    /** How far the last look at a part can still be relied on. */
    public Confidence confidence(PartState state, Optional<Exposure> exposure) {
        return Confidence.of(state, settings.months(figure(reason(state, exposure))), today);
    }

    private static Optional<Due> mend(PartState state) {
        return state.condition()
                .filter(found -> found.isWorseThan(Condition.DOUBTFUL))
                .map(found -> new Due(found == Condition.GONE ? DueReason.GONE : DueReason.UNSAFE, seen(state), 0));
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
