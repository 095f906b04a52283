package thalweg.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.due.DuePart;
import thalweg.due.DueWords;
import thalweg.settings.TripFigure;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** A plan in words: sections of lines. */
public final class PlanWords {

    private final Plan plan;
    private final Phrases phrases;
    private final UnitSystem units;

    private PlanWords(Plan plan, Phrases phrases, UnitSystem units) {
        this.plan = plan;
        this.phrases = phrases;
        this.units = units;
    }

    /** Lines under a heading. */
    public record Section(String heading, List<String> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /** What stands at the top. */
    public static String title(Plan plan, Phrases phrases) {
        return phrases.say("plan.title", plan.canyonName(), plan.request().on())
                + (plan.invented() ? " (" + phrases.say("invented") + ")" : "");
    }

    /** Everything that was worked out, and what it rests on. */
    public static List<Section> of(Plan plan, Phrases phrases, UnitSystem units) {
        return new PlanWords(plan, phrases, units).sections();
    }

    /**
     * What of it a group takes along: ropes, material, how long it takes, until when to go on, and what all that rests on.
     * When the group is where, {@link PlannedPlace} tells. Nothing of it says what anybody weighs.
     */
    public static List<Section> toTakeAlong(Plan plan, Phrases phrases, UnitSystem units) {
        PlanWords words = new PlanWords(plan, phrases, units);
        return List.of(
                new Section(phrases.say("plan.heading.ropes"), words.ropes()),
                new Section(phrases.say("plan.heading.bring"), BringWords.of(plan, phrases, units)),
                new Section(phrases.say("plan.heading.times"), words.times(false)),
                new Section(phrases.say("plan.heading.light"), LightWords.of(plan, phrases)),
                new Section(phrases.say("plan.heading.assumed"), words.assumed()));
    }

    private List<Section> sections() {
        return List.of(
                new Section(phrases.say("plan.heading.ropes"), ropes()),
                new Section(phrases.say("plan.heading.bring"), BringWords.of(plan, phrases, units)),
                new Section(phrases.say("plan.heading.times"), times(true)),
                new Section(phrases.say("plan.heading.light"), LightWords.of(plan, phrases)),
                new Section(phrases.say("plan.heading.water"), water()),
                new Section(phrases.say("plan.heading.due"), due()),
                new Section(phrases.say("plan.heading.rigs"), rigs()),
                new Section(phrases.say("plan.heading.assumed"), assumed()));
    }

    private List<String> ropes() {
        RopeChoice choice = plan.ropes();
        List<String> lines = new ArrayList<>();
        if (plan.request().ropes().isEmpty()) {
            lines.add(phrases.say("plan.rope.none"));
        } else if (choice.drops().stream().allMatch(drop -> drop.technique().isEmpty())) {
            lines.add(phrases.say("plan.rope.none_needed"));
        } else {
            choice.carried()
                    .forEach(index -> lines.add(
                            phrases.say("plan.rope", rope(plan.request().ropes().get(index)))));
            if (choice.kilograms().isPresent()) {
                lines.add(
                        phrases.say("plan.rope.weight", fixed(choice.kilograms().getAsDouble(), 1)));
            } else {
                lines.add(phrases.say("plan.rope.no_weight"));
            }
            lines.add(phrases.say(
                    choice.spare() ? "plan.rope.spare" : choice.serves() ? "plan.rope.no_spare" : "plan.rope.short"));
        }
        if (!choice.deciding().isEmpty()) {
            lines.add(phrases.say(
                    "plan.rope.deciding",
                    choice.deciding().stream()
                            .map(index -> place(choice.drops().get(index).need()))
                            .collect(Collectors.joining("; "))));
        }
        choice.drops().forEach(drop -> lines.add(drop(drop)));
        String lowered = choice.drops().stream()
                .filter(drop -> drop.lowered().orElse(false))
                .filter(drop -> drop.technique().orElseThrow() != Technique.LOWERED)
                .map(drop -> place(drop.need()))
                .collect(Collectors.joining("; "));
        if (!lowered.isEmpty()) {
            lines.add(phrases.say("plan.rope.lowered", lowered));
        }
        return lines;
    }

    private String rope(RopeAtHand rope) {
        return Stream.of(rope.length().print(units), rope.kind())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String drop(RopeChoice.Drop drop) {
        Optional<Length> length = drop.need().length();
        if (length.isEmpty()) {
            return phrases.say("plan.drop.unknown", place(drop.need()));
        }
        String size = length.get().print(units)
                + (drop.need().measured() ? "" : " (" + phrases.say("plan.drop.height") + ")");
        if (plan.request().ropes().isEmpty()) {
            RopeMargin margin = plan.request().margin();
            return phrases.say(
                    "plan.drop.takes",
                    place(drop.need()),
                    size,
                    carried(margin.doubled(length.get().metres())),
                    carried(margin.single(length.get().metres())));
        }
        return phrases.say(
                "plan.drop",
                place(drop.need()),
                size,
                technique(drop.technique().orElseThrow()),
                phrases.say("plan.after_loss", technique(drop.afterLoss().orElseThrow())));
    }

    /** A new rope, in whole metres, of which that is left [m]. */
    private String carried(double metres) {
        return new Length(Math.ceil(plan.request().margin().before(metres))).print(units);
    }

    private String technique(Technique technique) {
        return phrases.say("plan.technique." + technique.name().toLowerCase(Locale.ROOT));
    }

    private String place(RopeNeed need) {
        return place(need.place(), need.name());
    }

    private String place(int number, String name) {
        return name.isEmpty() ? phrases.say("plan.place", number) : phrases.say("plan.place.named", number, name);
    }

    private List<String> times(boolean places) {
        List<String> lines = new ArrayList<>();
        if (plan.past()) {
            lines.add(phrases.say("plan.past", plan.request().on()));
        }
        lines.add(way("plan.approach", plan.approach()));
        Timetable table = plan.timetable();
        double[] end = table.end();
        lines.add(phrases.say(
                "plan.line",
                phrases.count("plan.people", table.people()),
                phrases.count("plan.sets", table.sets()),
                minutes(end[1]),
                table.runs(),
                minutes(end[0]),
                minutes(end[2])));
        plan.statedLine().ifPresent(stated -> lines.add(phrases.say("plan.line.stated", minutes(stated))));
        lines.addAll(PaceWords.of(plan, phrases));
        if (plan.unmeasured() > 0) {
            lines.add(phrases.count("plan.unmeasured", plan.unmeasured()));
        }
        lines.add(way("plan.exit", plan.exit()));
        Optional<Double> begin = plan.request()
                .start()
                .flatMap(start -> plan.approach().minutes().map(way -> start + way));
        if (begin.isEmpty()) {
            lines.add(phrases.say("plan.no_start"));
        }
        for (Timetable.Step step : table.steps()) {
            if (places && (step.step().roped() || step.step().escape())) {
                lines.add(step(step, begin));
            }
        }
        Optional<Double> exit = plan.exit().minutes();
        if (plan.approach().minutes().isEmpty() || exit.isEmpty()) {
            lines.add(phrases.say("plan.no_whole"));
        } else if (begin.isPresent()) {
            lines.add(
                    phrases.say("plan.back", at(begin, end[1] + exit.get()), at(begin, plan.lateLine() + exit.get())));
        }
        return lines;
    }

    private String step(Timetable.Step step, Optional<Double> begin) {
        String line = phrases.say(
                step.step().escape() ? "plan.step.escape" : "plan.step",
                place(step.step().place(), step.step().name()),
                at(begin, step.middle()),
                at(begin, plan.late(step)));
        if (!step.step().escape()) {
            return line;
        }
        return step.step()
                .wayOut()
                .map(way -> phrases.say(
                        "plan.step.out",
                        line,
                        minutes(way),
                        at(begin, step.middle() + way),
                        at(begin, plan.late(step) + way)))
                .orElseGet(() -> phrases.say("plan.step.out_unknown", line));
    }

    private String way(String key, Way way) {
        String name = phrases.say(key);
        if (way.metres().isPresent()) {
            double tobler = Walking.tobler(way.metres().get(), way.up(), way.down());
            return phrases.say("plan.way.din", name, minutes(way.minutes().orElseThrow()), minutes(tobler));
        }
        return way.minutes()
                .map(stated -> phrases.say("plan.way.stated", name, minutes(stated)))
                .orElseGet(() -> phrases.say("plan.way.unknown", name));
    }

    /** A time of day where the start is known, else minutes. */
    private String at(Optional<Double> begin, double minutes) {
        return begin.map(start -> TimeWords.clock(start + minutes)).orElseGet(() -> minutes(minutes));
    }

    private String minutes(double minutes) {
        return TimeWords.span(minutes, phrases);
    }

    private List<String> water() {
        List<String> lines = new ArrayList<>();
        lines.add(plan.request()
                .flood()
                .map(flood -> phrases.say("plan.water.flood." + flood.name().toLowerCase(Locale.ROOT)))
                .orElseGet(() -> phrases.say("plan.water.no_flood")));
        lines.add(
                plan.concentration().isPresent()
                        ? phrases.say(
                                "plan.water.kirpich",
                                minutes(plan.concentration().getAsDouble()))
                        : phrases.say("plan.water.no_catchment"));
        plan.season().ifPresent(season -> lines.add(phrases.say("plan.water.season", season)));
        lines.add(phrases.caution("plan.water.verdict"));
        return lines;
    }

    private List<String> due() {
        if (plan.due().isEmpty()) {
            return List.of(phrases.say(plan.parts() == 0 ? "plan.due.no_parts" : "plan.due.none"));
        }
        return plan.due().stream().map(this::due).toList();
    }

    private String due(DuePart part) {
        return phrases.say(
                "plan.due.line",
                part.row().stationName(),
                part.row().part().label(),
                DueWords.what(part.first(), plan.request().on(), phrases));
    }

    private List<String> rigs() {
        List<String> lines = new ArrayList<>();
        if (plan.reviews().isEmpty()) {
            lines.add(phrases.say("plan.rig.none"));
        } else {
            lines.add(plan.heaviest()
                    .map(weight -> phrases.say("plan.rig.weight", fixed(weight, 0)))
                    .orElseGet(() -> phrases.say("plan.rig.no_weight")));
            plan.reviews().forEach(review -> lines.add(review(review)));
        }
        if (!plan.withoutAnalysis().isEmpty()) {
            lines.add(phrases.say("plan.rig.without", String.join(", ", plan.withoutAnalysis())));
        }
        return lines;
    }

    private String review(RigReview review) {
        String ratio = review.leastRatio().isPresent()
                ? fixed(Math.floor(review.leastRatio().getAsDouble() * 10) / 10, 1)
                : phrases.say("unknown");
        String line = phrases.say(
                "plan.rig.line",
                review.station(),
                review.analysis(),
                review.made().print(),
                ratio);
        List<String> reasons = new ArrayList<>();
        if (review.unknown()) {
            reasons.add(phrases.say("plan.rig.unknown"));
        } else if (!review.within()) {
            reasons.add(phrases.say("plan.rig.not_within"));
        }
        if (review.old()) {
            reasons.add(phrases.say("plan.rig.old"));
        }
        return !reasons.isEmpty() ? line + "; " + phrases.say("plan.rig.decide", String.join(", ", reasons)) : line;
    }

    private List<String> assumed() {
        RopeMargin margin = plan.request().margin();
        List<String> lines = new ArrayList<>();
        lines.add(phrases.say(
                "plan.assumed.margin",
                fixed(100 * margin.shrinkage(), 0) + " %",
                margin.reserve().print(units)));
        lines.add(BringWords.assumed(plan, phrases, units));
        lines.add(phrases.say("plan.assumed.paces"));
        lines.add(phrases.say("plan.assumed.beginners", fixed(plan.figure(TripFigure.BEGINNER_FACTOR), 1)));
        boolean rests = plan.figure(TripFigure.BREAK_EVERY_MIN) > 0;
        lines.add(
                rests
                        ? phrases.say(
                                "plan.assumed.rests",
                                minutes(plan.figure(TripFigure.BREAK_MIN)),
                                minutes(plan.figure(TripFigure.BREAK_EVERY_MIN)))
                        : phrases.say("plan.assumed.no_rests"));
        lines.add(phrases.say("plan.assumed.walking"));
        return lines;
    }

    private static String fixed(double number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", number);
    }
}
