package thalweg.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import thalweg.due.Due;
import thalweg.due.DuePart;
import thalweg.due.DueRules;
import thalweg.exchange.json.TripFile;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PartRow;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RigStanding;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.plan.BringMaterial;
import thalweg.plan.Catchment;
import thalweg.plan.ChooseRopes;
import thalweg.plan.Daylight;
import thalweg.plan.KeptMaterial;
import thalweg.plan.LineStep;
import thalweg.plan.OwnPace;
import thalweg.plan.PacedTrip;
import thalweg.plan.Paces;
import thalweg.plan.Party;
import thalweg.plan.Plan;
import thalweg.plan.PlannedAt;
import thalweg.plan.Rests;
import thalweg.plan.RigReview;
import thalweg.plan.RopeNeed;
import thalweg.plan.Timetable;
import thalweg.plan.TripRequest;
import thalweg.plan.Way;
import thalweg.rig.Aftermath;
import thalweg.rig.Analyze;
import thalweg.rig.CheckedRig;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;
import thalweg.rig.RigPoint;
import thalweg.route.CanyonText;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.settings.Settings;
import thalweg.settings.TripFigure;

/** Works out what a trip needs. */
public final class PlanTrip {

    private final Session session;
    private final Settings settings;

    /**
     * @param settings whose figures say what is due
     */
    public PlanTrip(Session session, Settings settings) {
        this.session = session;
        this.settings = settings;
    }

    /**
     * The trip in a file.
     *
     * @throws thalweg.fault.InputException when there is none, or none that can be planned
     */
    public static TripRequest read(Path file) {
        return AnalyzeRig.open(file, in -> TripFile.read(file.toString(), in.readNBytes(AnalyzeRig.LARGEST + 1)));
    }

    /**
     * Everything that can be worked out for a trip of the records.
     *
     * @throws thalweg.fault.InputException when it has no day, or nobody goes
     */
    public Plan of(Trip trip) {
        return of(TripRequest.of(trip), new LearnPace(session, settings::figure).of(trip));
    }

    /**
     * Everything that can be worked out for it.
     *
     * @throws thalweg.fault.InputException when no canyon fits, or a trip that is to teach its pace is not there
     */
    public Plan of(TripRequest request) {
        ToDoubleFunction<TripFigure> figures = figure -> request.figure(figure, settings);
        return of(request, request.paceFrom().map(new LearnPace(session, figures)::from));
    }

    private Plan of(TripRequest request, Optional<OwnPace> pace) {
        Trip.doubt(Trip.State.PLANNED, PartialDate.of(request.on()), session.today())
                .ifPresent(why -> {
                    throw new InputException(Sentence.of("The day {0} {1}.", request.on(), why));
                });
        CanyonRecord canyon = new FindRecord(session).canyon(request.canyon());
        ZoneId zone = request.zone().orElse(ZoneId.systemDefault());
        List<LineStep> line = LineStep.of(canyon);
        ToDoubleFunction<TripFigure> figures = figure -> request.figure(figure, settings);
        DueRules rules = new DueRules(settings, request.on());
        return new Plan(
                request,
                canyon.canyon().name(),
                canyon.canyon().invented(),
                ChooseRopes.of(RopeNeed.of(canyon), request.ropes(), request.margin()),
                way(request.approach(), canyon.canyon().times().approachMinutes()),
                way(request.exit(), canyon.canyon().times().exitMinutes()),
                Timetable.of(
                        line,
                        Party.of(request.people(), figures.applyAsDouble(TripFigure.BEGINNER_FACTOR)),
                        request.sets(),
                        paces(pace, figures),
                        Rests.of(figures)),
                canyon.canyon().times().descentMinutes(),
                LineStep.unknown(canyon),
                canyon.canyon().position().map(at -> Daylight.of(at, request.on(), zone)),
                request.watercourse()
                        .map(along -> OptionalDouble.of(Catchment.kirpich(along)))
                        .orElse(OptionalDouble.empty()),
                canyon.canyon().prose().under(CanyonText.SEASON),
                due(canyon, rules, request.on()),
                reviews(canyon, request.heaviestKilograms()),
                request.heaviestKilograms(),
                BringMaterial.of(canyon, rules, request.on(), PlanTrip::materials, figures),
                all(figures),
                pace,
                canyon.stations().stream()
                        .mapToInt(station -> station.parts().size())
                        .sum(),
                request.on().isBefore(session.today()),
                withoutAnalysis(canyon));
    }

    /** When the group of a trip is planned to have passed each place, by its number; empty where nobody is entered to go. */
    public Map<Integer, PlannedAt> times(Trip trip, CanyonRecord canyon) {
        if (trip.people().isEmpty()) {
            return Map.of();
        }
        Timetable table = Timetable.of(
                LineStep.of(canyon),
                Party.of(trip.people(), settings.figure(TripFigure.BEGINNER_FACTOR)),
                trip.ropeSets().orElse(1),
                paces(new LearnPace(session, settings::figure).of(trip), settings::figure),
                Rests.of(settings::figure));
        Optional<Integer> begin = trip.start()
                .flatMap(start -> canyon.canyon().times().approachMinutes().map(approach -> start + approach));
        double from = begin.orElse(0);
        double longer = Plan.longer(table, canyon.canyon().times().descentMinutes());
        Map<Integer, PlannedAt> times = new HashMap<>();
        table.steps()
                .forEach(step -> times.put(
                        step.step().place(),
                        new PlannedAt(from + step.middle(), from + longer * step.late(), begin.isPresent())));
        return times;
    }

    /** How a trip went against the figures that are set. */
    public PacedTrip paced(Trip trip, CanyonRecord canyon) {
        return PacedTrip.of(trip, canyon, settings::figure);
    }

    private static Paces paces(Optional<OwnPace> own, ToDoubleFunction<TripFigure> figures) {
        Paces usual = Paces.of(figures);
        return own.map(pace -> pace.of(usual)).orElse(usual);
    }

    private static Way way(Way stated, Optional<Integer> recorded) {
        return stated.equals(Way.UNKNOWN) ? new Way(Optional.empty(), 0, 0, recorded) : stated;
    }

    private static Map<TripFigure, Double> all(ToDoubleFunction<TripFigure> figures) {
        Map<TripFigure, Double> all = new EnumMap<>(TripFigure.class);
        for (TripFigure figure : TripFigure.values()) {
            all.put(figure, figures.applyAsDouble(figure));
        }
        return all;
    }

    private static List<DuePart> due(CanyonRecord canyon, DueRules rules, LocalDate day) {
        List<DuePart> due = new ArrayList<>();
        for (StationRecord station : canyon.stations()) {
            for (PartRecord part : station.parts()) {
                PartRow row = row(canyon, station, part);
                List<Due> now = rules.of(row.part(), row.state(), row.replacedSince(), row.exposure()).stream()
                        .filter(one -> one.isDue(day))
                        .toList();
                if (!now.isEmpty()) {
                    due.add(new DuePart(row, now));
                }
            }
        }
        return due;
    }

    private static PartRow row(CanyonRecord canyon, StationRecord station, PartRecord part) {
        return new PartRow(
                canyon.canyon().uid(),
                canyon.canyon().name(),
                station.station().uid(),
                station.station().name(),
                station.station().exposure(),
                canyon.canyon().invented(),
                part.part(),
                part.state(),
                part.lastReplaced());
    }

    private static List<KeptMaterial> materials(StationRecord station) {
        List<KeptMaterial> materials = new ArrayList<>();
        for (Entry<RigAnalysis> entry : station.countingAnalyses()) {
            AnalyzeRig.kept(entry.content())
                    .ifPresent(rig -> materials.add(new KeptMaterial(
                            rig.points().stream().map(RigPoint::name).toList(),
                            Analyze.of(rig).material(),
                            station.isOld(entry.content()))));
        }
        return materials;
    }

    private static List<RigReview> reviews(CanyonRecord canyon, Optional<Double> heaviest) {
        List<RigReview> reviews = new ArrayList<>();
        for (StationRecord station : canyon.stations()) {
            for (Entry<RigAnalysis> entry : station.countingAnalyses()) {
                AnalyzeRig.kept(entry.content())
                        .map(rig -> review(station, entry.content(), rig, heaviest))
                        .ifPresent(reviews::add);
            }
        }
        return reviews;
    }

    private static RigReview review(
            StationRecord station, RigAnalysis analysis, RigInput kept, Optional<Double> heaviest) {
        RigInput today = RigStanding.told(kept, station);
        RigAnswer answer =
                Analyze.of(heaviest.map(weight -> loaded(today, weight)).orElse(today));
        boolean unknown =
                answer.safety().stream().anyMatch(part -> part.steady().ratio().isEmpty());
        boolean within = answer.losses().stream()
                .allMatch(loss -> loss.aftermath()
                        .map(Aftermath::within)
                        .flatMap(known -> known.verdict())
                        .orElse(false));
        OptionalDouble least = answer.safety().stream()
                .flatMap(part -> part.steady().ratio().stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
        return new RigReview(
                station.station().name(), kept.name(), analysis.on(), least, unknown, within, station.isOld(analysis));
    }

    private static RigInput loaded(RigInput input, double kilograms) {
        RigDraft draft = RigDraft.of(input);
        CheckedRig checked = draft.withLoad(draft.load()
                        .pulling(
                                OptionalDouble.of(kilograms),
                                OptionalDouble.empty(),
                                draft.load().factor()))
                .check();
        return checked.input().orElse(input);
    }

    private static List<String> withoutAnalysis(CanyonRecord canyon) {
        return canyon.line().stream()
                .filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                .flatMap(place -> place.stations().stream())
                .filter(station -> station.countingAnalyses().isEmpty())
                .map(station -> station.station().name())
                .toList();
    }
}
