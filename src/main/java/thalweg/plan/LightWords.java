package thalweg.plan;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.settings.TripFigure;
import thalweg.text.Phrases;

/** Daylight, until when to go on, and when to call for help, in words. */
final class LightWords {

    private final Plan plan;
    private final Phrases phrases;

    private LightWords(Plan plan, Phrases phrases) {
        this.plan = plan;
        this.phrases = phrases;
    }

    static List<String> of(Plan plan, Phrases phrases) {
        return new LightWords(plan, phrases).lines();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        Optional<ZonedDateTime> set = plan.daylight().flatMap(Daylight::set);
        Optional<ZonedDateTime> rise = plan.daylight().flatMap(Daylight::rise);
        if (plan.daylight().isEmpty()) {
            lines.add(phrases.say("plan.sun.no_place"));
        } else if (set.isEmpty() || rise.isEmpty()) {
            lines.add(phrases.say("plan.sun.never"));
        } else {
            lines.add(phrases.say(
                    "plan.sun",
                    rise.get().format(TimeWords.CLOCK),
                    set.get().format(TimeWords.CLOCK),
                    set.get().getZone().getId()));
        }
        List<TurnAround> points = TurnAround.of(plan);
        if (points.isEmpty()) {
            lines.add(phrases.say("plan.turn.unknown"));
        } else {
            lines.add(phrases.say("plan.turn", span(plan.figure(TripFigure.LIGHT_RESERVE_MIN))));
            points.forEach(point -> lines.add(point(point)));
            if (points.stream().noneMatch(point -> point.kind() == TurnAround.Kind.LINE)) {
                lines.add(phrases.say("plan.turn.unknown"));
            }
        }
        escapes().ifPresent(lines::add);
        callOut().ifPresent(lines::add);
        return lines;
    }

    /** What is not entered of the places at which the line can be left; empty where all is. */
    private Optional<String> escapes() {
        List<LineStep> escapes = plan.timetable().steps().stream()
                .map(Timetable.Step::step)
                .filter(LineStep::escape)
                .toList();
        if (escapes.isEmpty()) {
            return Optional.of(phrases.say("plan.turn.no_escape"));
        }
        String unknown = escapes.stream()
                .filter(step -> step.wayOut().isEmpty())
                .map(this::place)
                .collect(Collectors.joining("; "));
        return unknown.isEmpty() ? Optional.empty() : Optional.of(phrases.say("plan.turn.way_out", unknown));
    }

    private String span(double minutes) {
        return TimeWords.span(minutes, phrases);
    }

    private String point(TurnAround point) {
        String where = switch (point.kind()) {
            case CAR -> phrases.say("plan.turn.car");
            case LINE -> phrases.say("plan.turn.line");
            case ESCAPE -> phrases.say("plan.turn.escape", place(point.place().orElseThrow()));
            case OUT -> phrases.say("plan.turn.out", place(point.place().orElseThrow()));
        };
        if (point.latest() < 0) {
            return phrases.say("plan.turn.too_long", where);
        }
        String latest = phrases.say("plan.turn.latest", where, TimeWords.latest(point.latest()));
        return point.missed()
                ? latest + " "
                        + phrases.say(
                                "plan.turn.missed",
                                TimeWords.clock(point.plannedLate().orElseThrow()))
                : latest;
    }

    private String place(LineStep step) {
        return step.name().isEmpty()
                ? phrases.say("plan.place", step.place())
                : phrases.say("plan.place.named", step.place(), step.name());
    }

    private Optional<String> callOut() {
        Optional<Integer> start = plan.request().start();
        if (start.isEmpty() || plan.lateWhole().isEmpty()) {
            return Optional.empty();
        }
        double back = start.get() + plan.lateWhole().getAsDouble();
        String told = plan.request().tell().isEmpty()
                ? phrases.say("plan.call_out.nobody")
                : phrases.say("plan.call_out.tell", plan.request().tell());
        return Optional.of(phrases.say(
                "plan.call_out",
                TimeWords.clock(back + plan.request().callOutMinutes()),
                span(plan.request().callOutMinutes()),
                told));
    }
}
