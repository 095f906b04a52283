package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.Trip;
import thalweg.plan.PlanWords;
import thalweg.plan.PlannedPlace;

/** The plan of the trip for which the sheet is made: who goes, what to carry, when to be where, until when to go on. */
final class TripPart {

    private static final List<String> COLUMNS = List.of("place", "usual", "late", "latest", "passed");

    private final Wording wording;
    private final Places places;

    TripPart(Wording wording) {
        this.wording = wording;
        this.places = new Places(wording);
    }

    Section of(TripPlan plan, CanyonRecord shown) {
        Trip trip = plan.trip();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Facts(facts(trip)));
        timetable(plan, shown).ifPresent(blocks::add);
        List<Section> inner = new ArrayList<>();
        for (PlanWords.Section section : PlanWords.toTakeAlong(
                plan.plan(), wording.phrases(), wording.options().units())) {
            inner.add(Section.of(
                    "trip-" + (inner.size() + 1),
                    section.heading(),
                    section.lines().stream()
                            .<Block>map(line -> new Block.Paragraph(Words.of(line)))
                            .toList()));
        }
        String day = plan.plan().request().on().toString();
        String heading = trip.name().isBlank()
                ? wording.say("sheet.trip", day)
                : wording.say("sheet.trip.named", day, trip.name());
        return new Section("trip", heading, blocks, inner);
    }

    private List<Fact> facts(Trip trip) {
        List<Fact> facts = new ArrayList<>();
        facts.add(
                wording.fact("sheet.trip.start", wording.orUnknown(trip.start().map(PlannedPlace::clock))));
        facts.add(wording.fact("sheet.trip.back", wording.orUnknown(trip.back().map(PlannedPlace::clock))));
        List<Words> people = new ArrayList<>();
        people.add(Words.of(Integer.toString(trip.people().size())));
        if (wording.options().contents().names()) {
            trip.people().forEach(person -> people.add(Words.of(person(person))));
        }
        facts.add(wording.fact("sheet.trip.people", people));
        return facts;
    }

    /** What somebody weighs is nobody else's business. */
    private String person(Trip.Person person) {
        return person.role()
                .map(role -> wording.say("sheet.trip.person", person.name(), wording.of("trip_role", role)))
                .orElse(person.name());
    }

    private Optional<Block> timetable(TripPlan plan, CanyonRecord shown) {
        List<List<Cell>> rows = PlannedPlace.of(plan.plan(), wording.phrases()).stream()
                .flatMap(planned -> shown.line().stream()
                        .filter(place -> place.number() == planned.place())
                        .map(place -> row(planned, place)))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Table(
                        wording.say("sheet.trip.table"),
                        COLUMNS.stream()
                                .map(column -> wording.say("sheet.trip.column." + column))
                                .toList(),
                        rows));
    }

    private List<Cell> row(PlannedPlace planned, LineRecord place) {
        List<Words> name = new ArrayList<>();
        name.add(Words.of(places.shortName(place)));
        place.stations().forEach(station -> name.add(Words.of(station.station().name())));
        List<Words> latest = Stream.of(
                        planned.onBefore().map(time -> wording.words("sheet.trip.on_before", time)),
                        planned.outBefore().map(time -> wording.words("sheet.trip.out_before", time)))
                .flatMap(Optional::stream)
                .toList();
        return List.of(
                new Cell(name),
                Cell.of(Words.of(planned.usual())),
                Cell.of(Words.of(planned.late())),
                new Cell(latest),
                Cell.of(wording.blank()));
    }
}
