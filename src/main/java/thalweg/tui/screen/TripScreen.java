package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.NotedTime;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.logbook.TripTime;
import thalweg.plan.PlannedAt;
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
 * One trip: the places of the line with the planned and the noted times, and beside or below them what else is known of the
 * trip and what was found on its day.
 *
 * @param trip which
 * @param loaded it, once it is loaded
 * @param list which place is chosen
 * @param gone whether it is out of use
 * @param closing whether it is being called done, to go on into what was found
 */
record TripScreen(Uid trip, Optional<Told.TripLoaded> loaded, ListState list, boolean gone, boolean closing)
        implements Screen {

    /** Above the list: how the trip stands, and what the columns are. */
    private static final int HEAD = 2;

    /** Not loaded yet. */
    static TripScreen opened(Uid trip) {
        return new TripScreen(trip, Optional.empty(), ListState.START, false, false);
    }

    private List<LineRecord> line() {
        return loaded.map(told -> told.canyon().line()).orElse(List.of());
    }

    private Optional<LineRecord> chosen() {
        List<LineRecord> line = line();
        return line.isEmpty() ? Optional.empty() : Optional.of(line.get(Math.min(list.chosen(), line.size() - 1)));
    }

    private Trip shown() {
        return loaded.orElseThrow().shown().trip();
    }

    @Override
    public String title(Surroundings around) {
        return loaded.map(told -> around.say(
                        "trip.title_of",
                        told.shown().trip().name().isEmpty()
                                ? around.say("trip.unnamed")
                                : told.shown().trip().name(),
                        AboutLocal.name(told.shown().canyon(), around)))
                .orElse(around.say(gone ? "gone" : "loading"));
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty() && !gone;
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String readOnly = around.say("read_only.refused");
        String none = around.say(gone ? "trip.gone" : "loading");
        String noPlace = around.say(loaded.isEmpty() ? gone ? "trip.gone" : "loading" : "trip.no_line");
        boolean off = loaded.filter(told -> told.shown().trip().state() == Trip.State.CALLED_OFF)
                .isPresent();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.type_times"), this::type)
                .unless(chosen().isEmpty(), noPlace)
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.of('a'), around.say("key.reached_now"), () -> note(true))
                .unless(chosen().isEmpty(), noPlace)
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('l'), around.say("key.left_now"), () -> note(false))
                .unless(chosen().isEmpty(), noPlace)
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('c'), around.say(closed() ? "key.enter_found" : "key.close_trip"), this::close)
                .unless(off, around.say("trip.called_off"))
                .unless(loaded.isEmpty(), none)
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('p'), around.say("trips.plan"), () -> plan(around))
                .unless(loaded.isEmpty(), none));
        bindings.add(Binding.of(Key.of('v'), around.say("key.read"), () -> read(around))
                .unless(loaded.isEmpty(), none));
        bindings.add(
                Binding.of(Key.of('w'), around.say("key.sheet"), this::sheet).unless(loaded.isEmpty(), none));
        bindings.add(Binding.of(Key.of('e'), around.say("key.edit"), this::edit)
                .unless(loaded.isEmpty(), none)
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('D'), around.say("trips.due"), this::due).unless(loaded.isEmpty(), none));
        bindings.add(Binding.of(Key.of('x'), around.say("key.take_out_trip"), this::takeOut)
                .unless(loaded.isEmpty(), none)
                .unless(around.readOnly(), readOnly));
        bindings.addAll(Lists.bindings(list, line().size(), around.rows() - HEAD - 2, around, this::moved));
        return bindings;
    }

    private boolean closed() {
        return loaded.filter(told -> told.shown().trip().state() == Trip.State.DONE)
                .isPresent();
    }

    private Step moved(ListState to) {
        return Step.stay(new TripScreen(trip, loaded, to, gone, closing));
    }

    private TripScreen closing(boolean now) {
        return new TripScreen(trip, loaded, list, gone, now);
    }

    private Step type() {
        LineRecord place = chosen().orElseThrow();
        return Step.open(this, new Go.TypeTimes(shown(), place.obstacle().uid(), TripTime.label(place)));
    }

    /** The other of the two times stays as it was. */
    private Step note(boolean reached) {
        Uid place = chosen().orElseThrow().obstacle().uid();
        Optional<TripTime> before = shown().timeAt(place);
        NotedTime first = reached ? NotedTime.NOW : NotedTime.of(before.flatMap(TripTime::reached));
        NotedTime last = reached ? NotedTime.of(before.flatMap(TripTime::left)) : NotedTime.NOW;
        return Step.stay(this).doing(new Ask.NoteTimes(shown(), place, first, last));
    }

    private Step plan(Surroundings around) {
        return Step.stay(this).doing(new Ask.PlanTrip(shown(), around.settings()));
    }

    /** A trip is done before anybody says what was found on it; the form takes up where it was left. */
    private Step close() {
        return closed()
                ? down()
                : Step.stay(closing(true))
                        .doing(new Ask.SaveTrip(Optional.of(shown()), shown().withState(Trip.State.DONE)));
    }

    private Step down() {
        return Step.open(closing(false), new Go.GoDown(loaded.orElseThrow().canyon(), Optional.of(shown())));
    }

    private Step read(Surroundings around) {
        return Step.open(this, new Go.Read(title(around), detail(around)));
    }

    private Step edit() {
        TripInCanyon shown = loaded.orElseThrow().shown();
        return Step.open(this, new Go.EditTrip(trip, shown.canyon(), Optional.of(shown.trip())));
    }

    private Step sheet() {
        Told.TripLoaded told = loaded.orElseThrow();
        CanyonRecord canyon = told.canyon();
        return Step.open(
                this,
                new Go.WriteSheet(
                        canyon.canyon().uid(),
                        canyon.canyon().name(),
                        Optional.empty(),
                        told.local(),
                        Optional.of(trip)));
    }

    private Step due() {
        return Step.open(this, new Go.DueParts(loaded.map(told -> told.shown().canyon())));
    }

    private Step takeOut() {
        return Step.open(this, new Go.TakeOutTrip(loaded.orElseThrow().shown()));
    }

    private List<Paragraph> detail(Surroundings around) {
        return loaded.map(told -> AboutTrip.of(told, around)).orElse(List.of());
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return reload(closing(false), around);
        }
        if (message instanceof Told.Saved) {
            return reload(this, around);
        }
        if (message instanceof Told.TripLoaded told) {
            TripScreen now = new TripScreen(
                    trip,
                    Optional.of(told),
                    list.at(list.chosen(), told.canyon().line().size()),
                    false,
                    closing);
            return closing ? now.down() : Step.stay(now);
        }
        if (message instanceof Told.TripGone) {
            return Step.stay(new TripScreen(trip, Optional.empty(), list, true, false));
        }
        if (message instanceof Told.Planned told) {
            return Step.open(this, AboutPlan.of(told.plan(), around));
        }
        if (message instanceof Message.Failed failed) {
            return reload(closing(false), around).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), line().size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            int size = line().size();
            Message.MousePressed within = new Message.MousePressed(mouse.row() - HEAD, mouse.column());
            return ListDetail.pressed(within, list, size, around.rows() - 2 - HEAD, around)
                    .map(row -> row == list.chosen() && !around.readOnly() ? type() : moved(list.at(row, size)))
                    .orElse(Step.stay(this));
        }
        return Step.stay(this);
    }

    private Step reload(TripScreen now, Surroundings around) {
        return Step.stay(now).doing(new Ask.LoadTrip(trip, around.settings()));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty()) {
            Paragraph text = gone
                    ? Paragraph.of(around.say("trip.gone"), Style.ERROR)
                    : Paragraph.of(around.say("loading"), Style.FAINT);
            Paragraph.draw(canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4), List.of(text), 0, around);
            return;
        }
        CanyonRecord canyon = loaded.get().canyon();
        Paragraph standing = AboutTrip.standing(loaded.get(), around);
        canvas.fit(0, 2, canvas.columns() - 3, standing.text(), standing.style());
        List<LineRecord> line = canyon.line();
        if (line.isEmpty()) {
            List<Paragraph> text = new ArrayList<>(List.of(Paragraph.of(around.say("trip.no_line")), Paragraph.gap()));
            text.addAll(detail(around));
            Paragraph.draw(canvas.part(HEAD, 2, canvas.rows() - HEAD, canvas.columns() - 4), text, 0, around);
            return;
        }
        int width = around.wide() ? canvas.columns() / 2 : canvas.columns();
        boolean bar = line.size() > ListDetail.listHeight(around, canvas.rows() - HEAD, line.size());
        TripRow.head(canvas.part(1, 2, 1, width - 2 - (bar ? 1 : 0)), around);
        Map<Integer, PlannedAt> planned = loaded.get().planned();
        ListDetail.draw(
                canvas.part(HEAD, 0, canvas.rows() - HEAD, canvas.columns()),
                list,
                line.size(),
                detail(around),
                around,
                (row, index, style) -> TripRow.draw(
                        row,
                        line.get(index),
                        Optional.ofNullable(planned.get(line.get(index).number())),
                        shown().timeAt(line.get(index).obstacle().uid()),
                        style));
    }
}
