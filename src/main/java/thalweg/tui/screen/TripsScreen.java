package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.Paragraph;

/**
 * Trips to one canyon or to all: what is planned first, then what was done; the chosen one beside the list where there is
 * room.
 *
 * @param go whose trips
 * @param loaded the trips, once they are loaded
 * @param list which row is chosen
 */
record TripsScreen(Go.Trips go, Optional<Told.TripsLoaded> loaded, ListState list) implements Screen {

    private static final int DAY = 10;
    private static final int STATE = 10;
    private static final int PEOPLE = 10;
    private static final int NARROW = 56;

    /** Not loaded yet. */
    static TripsScreen opened(Go.Trips go) {
        return new TripsScreen(go, Optional.empty(), ListState.START);
    }

    private List<TripInCanyon> trips() {
        return loaded.map(Told.TripsLoaded::trips).orElse(List.of());
    }

    private Optional<TripInCanyon> chosen() {
        List<TripInCanyon> trips = trips();
        return trips.isEmpty() ? Optional.empty() : Optional.of(trips.get(Math.min(list.chosen(), trips.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        String title = go.canyon()
                .map(canyon -> around.say("trips.title_of", AboutLocal.name(canyon, around)))
                .orElse(around.say("trips.title"));
        return loaded.isEmpty() ? title : title + "  " + trips().size();
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String readOnly = around.say("read_only.refused");
        boolean none = chosen().isEmpty();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open"), this::open)
                .unless(none, around.say("trips.nothing")));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.of('n'), around.say("key.new_trip"), this::enterNew)
                .unless(loaded.isEmpty(), around.say("loading"))
                .unless(go.canyon().isEmpty(), around.say("trips.which_canyon"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('e'), around.say("key.edit"), this::edit)
                .unless(none, around.say("trips.nothing"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(
                        Key.of('p'),
                        around.say("trips.plan"),
                        () -> Step.stay(this)
                                .doing(new Ask.PlanTrip(chosen().orElseThrow().trip(), around.settings())))
                .unless(none, around.say("trips.nothing")));
        bindings.add(Binding.of(
                        Key.of('D'),
                        around.say("trips.due"),
                        () -> Step.open(this, new Go.DueParts(chosen().map(TripInCanyon::canyon))))
                .unless(none, around.say("trips.nothing")));
        bindings.add(Binding.of(Key.of('x'), around.say("key.take_out_trip"), this::takeOut)
                .unless(none, around.say("trips.nothing"))
                .unless(around.readOnly(), readOnly));
        bindings.addAll(Lists.bindings(list, trips().size(), around.rows() - 3, around, this::moved));
        return bindings;
    }

    private Step moved(ListState to) {
        return Step.stay(new TripsScreen(go, loaded, to));
    }

    private Step open() {
        return Step.open(this, new Go.OneTrip(chosen().orElseThrow().trip().uid()));
    }

    private Step enterNew() {
        Told.TripsLoaded told = loaded.orElseThrow();
        return Step.open(this, new Go.EditTrip(told.spare(), go.canyon().orElseThrow(), Optional.empty()));
    }

    private Step edit() {
        TripInCanyon chosen = chosen().orElseThrow();
        return Step.open(this, new Go.EditTrip(chosen.trip().uid(), chosen.canyon(), Optional.of(chosen.trip())));
    }

    private Step takeOut() {
        return Step.open(this, new Go.TakeOutTrip(chosen().orElseThrow()));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(new Ask.LoadTrips(go.canyon().map(canyon -> canyon.uid())));
        }
        if (message instanceof Told.TripsLoaded told) {
            return Step.stay(new TripsScreen(go, Optional.of(told), keptOn(told)));
        }
        if (message instanceof Told.Planned told) {
            return Step.open(this, AboutPlan.of(told.plan(), around));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), trips().size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            int row = list.shownIn(around.rows() - 3, trips().size()).top() + mouse.row() - 1;
            boolean onRow = mouse.row() >= 1 && row < trips().size();
            return !onRow ? Step.stay(this) : row == list.chosen() ? open() : moved(list.at(row, trips().size()));
        }
        return Step.stay(this);
    }

    /** The choice stays on its trip wherever that stands now, and a trip that was just entered is chosen. */
    private ListState keptOn(Told.TripsLoaded told) {
        List<Uid> now = told.trips().stream().map(shown -> shown.trip().uid()).toList();
        int entered = loaded.map(before -> now.indexOf(before.spare())).orElse(-1);
        int same = chosen().map(before -> now.indexOf(before.trip().uid())).orElse(-1);
        return list.at(entered >= 0 ? entered : same >= 0 ? same : list.chosen(), now.size());
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty()) {
            canvas.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        List<TripInCanyon> trips = trips();
        if (trips.isEmpty()) {
            String key = go.canyon().isEmpty() ? "trips.empty" : "trips.empty_of";
            Canvas middle = canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4);
            Paragraph.draw(
                    middle,
                    List.of(
                            Paragraph.of(around.say(key)),
                            Paragraph.gap(),
                            Paragraph.of(around.say("trips.private"), Style.FAINT)),
                    0,
                    around);
            return;
        }
        int width = around.wide() ? canvas.columns() / 2 : canvas.columns();
        Canvas body = canvas.part(1, 0, canvas.rows() - 1, width);
        boolean bar = trips.size() > body.rows();
        row(
                canvas.part(0, 2, 1, width - 2 - (bar ? 1 : 0)),
                around.say("trips.day"),
                around.say("trips.state"),
                around.say("trips.what"),
                around.say("trips.people"),
                Style.FAINT,
                Style.FAINT);
        Lists.draw(
                body,
                list,
                trips.size(),
                true,
                around,
                (line, index, style) -> row(line, trips.get(index), style, around));
        if (around.wide()) {
            Canvas right = canvas.part(0, width + 1, canvas.rows(), canvas.columns() - width - 2);
            chosen().ifPresent(trip -> Paragraph.draw(right, AboutLocal.trip(trip, around), 0, around));
        }
    }

    private void row(Canvas line, TripInCanyon shown, Style style, Surroundings around) {
        Trip trip = shown.trip();
        boolean overdue = trip.isOverdue(around.today());
        String state = overdue ? around.say("trips.overdue") : Looks.word(around, "trip_state", trip.state());
        Style stateStyle = style == Style.SELECTED ? style : overdue ? Style.MIND : style;
        String name = trip.name().isEmpty() ? around.say("trip.unnamed") : trip.name();
        String what = go.canyon().isPresent() ? name : around.labelled(AboutLocal.name(shown.canyon(), around), name);
        String people = trip.people().isEmpty()
                ? ""
                : around.phrases().count("trips.count", trip.people().size());
        row(
                line,
                trip.on().map(day -> day.print()).orElse(around.say("trips.no_day")),
                state,
                what,
                people,
                style,
                stateStyle);
    }

    private static void row(
            Canvas line, String day, String state, String what, String people, Style style, Style stateStyle) {
        boolean narrow = line.columns() < NARROW;
        int room = Math.max(8, line.columns() - DAY - STATE - 4 - (narrow ? 0 : PEOPLE + 2));
        line.fit(0, 0, DAY, day, style);
        line.fit(0, DAY + 2, STATE, state, stateStyle);
        line.fit(0, DAY + STATE + 4, room, what, style);
        if (!narrow) {
            line.fit(0, DAY + STATE + 4 + room + 2, PEOPLE, people, style);
        }
    }
}
