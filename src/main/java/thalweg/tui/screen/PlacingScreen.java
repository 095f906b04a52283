package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import thalweg.place.Position;
import thalweg.placing.Decision;
import thalweg.placing.Placing;
import thalweg.placing.Refusal;
import thalweg.placing.Spot;
import thalweg.route.ObstacleKind;
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
 * Waypoints on one side, a canyon's line on the other; a key says what the chosen waypoint is to the chosen place. Every
 * decision is a person's, each can be taken back, and nothing is written before all of it is saved at once.
 *
 * @param go what is placed
 * @param placing what is decided so far
 * @param at where the person is
 * @param past what was before each decision, the latest last
 * @param state how far it is
 */
record PlacingScreen(Go.PlaceWaypoints go, Placing placing, At at, List<Past> past, FormScreen.State state)
        implements Screen {

    /** Decisions that can be taken back, one after the other. */
    private static final int MOST_PAST = 100;

    /**
     * Where the person is.
     *
     * @param waypoints which waypoint is chosen
     * @param line which row of the line is chosen
     * @param onLine whether the arrows move on the line
     * @param kind of the next new place
     */
    record At(ListState waypoints, ListState line, boolean onLine, ObstacleKind kind) {}

    /** What was before a decision, and about which waypoint it was. */
    record Past(Placing placing, int waypoint) {}

    PlacingScreen {
        past = List.copyOf(past);
    }

    /** Nothing decided, the first waypoint and the end of the line chosen. */
    static PlacingScreen of(Go.PlaceWaypoints go) {
        int last = PlacingRow.of(go.start()).size() - 1;
        At start = new At(ListState.START, new ListState(last, 0), false, ObstacleKind.DROP);
        return new PlacingScreen(go, go.start(), start, List.of(), FormScreen.State.EDITING);
    }

    /** The chosen waypoint, counted from 0. */
    int waypoint() {
        return Math.min(at.waypoints().chosen(), placing.waypoints().size() - 1);
    }

    /** The chosen row of the line. */
    PlacingRow row(List<PlacingRow> rows) {
        return rows.get(Math.min(at.line().chosen(), rows.size() - 1));
    }

    private PlacingRow row() {
        return row(PlacingRow.of(placing));
    }

    /** The kind that the chosen waypoint has, or a new place would get. */
    ObstacleKind kind() {
        return placing.decisions().get(waypoint()) instanceof Decision.NewPlace place ? place.kind() : at.kind();
    }

    @Override
    public String title(Surroundings around) {
        return around.say("placing.title", placing.canyon().canyon().name(), go.file());
    }

    @Override
    public boolean unsaved() {
        return state != FormScreen.State.DONE
                && placing.undecided() < placing.waypoints().size();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        bindings.add(acting(Key.of('a'), "key.place_after", around, () -> newPlace(row().number(), true, around)));
        bindings.add(Binding.of(
                Key.Named.TAB,
                around.say(at.onLine() ? "key.to_waypoints" : "key.to_line"),
                () -> Step.stay(with(new At(at.waypoints(), at.line(), !at.onLine(), at.kind())))));
        bindings.add(acting(Key.of('p'), "key.its_position", around, () -> position(around)));
        bindings.add(acting(Key.of('s'), "key.station_there", around, () -> newStation(around))
                .unless(row().spot().isEmpty(), around.say("placing.station_needs_place")));
        bindings.add(acting(Key.ctrl('s'), "key.save", around, this::save)
                .or(Key.of(Key.Named.F2))
                .unless(placing.taken() == 0, around.say("placing.nothing_placed")));
        bindings.add(acting(Key.of('x'), "key.leave_out", around, () -> decided(new Decision.LeftOut(), around)));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(acting(Key.of('z'), "key.undo_decision", around, () -> undone(around))
                .or(Key.of(Key.Named.BACKSPACE))
                .unless(past.isEmpty(), around.say("placing.nothing_to_undo")));
        bindings.add(acting(Key.of(Key.Named.RIGHT), "key.next_kind", around, () -> turned(1)));
        bindings.add(
                acting(Key.of('b'), "key.place_before", around, () -> newPlace(row().number() - 1, false, around)));
        bindings.add(acting(Key.of('f'), "key.rest_as_places", around, () -> restAsPlaces(around))
                .unless(placing.undecided() == 0, around.say("placing.all_decided")));
        bindings.add(acting(Key.of(Key.Named.LEFT), "key.previous_kind", around, () -> turned(-1))
                .quiet());
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.read"), () -> read(around)));
        bindings.add(Binding.of(Key.of('i'), around.say("key.about_placing"), () -> help(around)));
        int page = PlacingView.listRows(around.rows() - 2) - 1;
        bindings.addAll(
                at.onLine()
                        ? Lists.bindings(at.line(), PlacingRow.of(placing).size(), page, around, this::onLine)
                        : Lists.bindings(at.waypoints(), placing.waypoints().size(), page, around, this::onWaypoint));
        return bindings;
    }

    /** A key that changes what is decided waits while that is being saved. */
    private Binding acting(Key key, String label, Surroundings around, Supplier<Step> action) {
        return Binding.of(key, around.say(label), action)
                .unless(state == FormScreen.State.SENDING, around.say("form.sending"));
    }

    private PlacingScreen with(At where) {
        return new PlacingScreen(go, placing, where, past, state);
    }

    private PlacingScreen in(FormScreen.State next) {
        return new PlacingScreen(go, placing, at, past, next);
    }

    private Step onLine(ListState to) {
        return Step.stay(with(new At(at.waypoints(), to, at.onLine(), at.kind())));
    }

    private Step onWaypoint(ListState to) {
        return Step.stay(with(new At(to, at.line(), at.onLine(), at.kind())));
    }

    /**
     * The state after a decision.
     *
     * @param next what is decided then
     * @param waypoint the one to go to
     * @param row the row of the line to stay on or go to
     */
    private PlacingScreen after(Placing next, int waypoint, PlacingRow row) {
        List<Past> longer = new ArrayList<>(past);
        longer.add(new Past(placing, waypoint()));
        List<Past> kept = longer.subList(Math.max(0, longer.size() - MOST_PAST), longer.size());
        return new PlacingScreen(go, next, moved(next, waypoint, row), kept, state);
    }

    private At moved(Placing next, int waypoint, PlacingRow row) {
        List<PlacingRow> rows = PlacingRow.of(next);
        int index = at.line().chosen();
        for (int i = 0; i < rows.size(); i++) {
            index = rows.get(i).is(row) ? i : index;
        }
        return new At(
                at.waypoints().at(waypoint, next.waypoints().size()),
                at.line().at(index, rows.size()),
                at.onLine(),
                at.kind());
    }

    /** What was decided about a waypoint, said once it is. */
    private Step said(PlacingScreen next, int waypoint, Surroundings around) {
        PlacingWords words = new PlacingWords(next.placing, around);
        String rest = next.placing.undecided() == 0 ? " " + around.say("placing.all_decided") : "";
        return Step.stay(next).saying(around.labelled(words.waypoint(waypoint), words.state(waypoint)) + "." + rest);
    }

    private Step newPlace(int before, boolean follow, Surroundings around) {
        int waypoint = waypoint();
        Placing next = placing.newPlace(waypoint, kind(), Math.max(0, before));
        PlacingRow made = new PlacingRow(0, Optional.of(new Spot.Made(waypoint)), Optional.empty(), Optional.empty());
        return said(after(next, next.nextUndecided(waypoint), follow ? made : row()), waypoint, around);
    }

    private Step decided(Decision decision, Surroundings around) {
        int waypoint = waypoint();
        Optional<Refusal> refusal = placing.refusal(waypoint, decision);
        if (refusal.isPresent()) {
            return Step.stay(this).refusing(Looks.word(around, "placing.refused", refusal.get()));
        }
        Placing next = placing.decided(waypoint, decision);
        return said(after(next, next.nextUndecided(waypoint), row()), waypoint, around);
    }

    private Step position(Surroundings around) {
        return row().position()
                .map(decision -> telling(decided(decision, around), around))
                .orElseGet(() -> Step.stay(this).refusing(around.say("placing.has_its_own")));
    }

    /** That coordinates which were there are given up for others is said at once. */
    private Step telling(Step step, Surroundings around) {
        Optional<Position> had = new PlacingWords(placing, around).before(row());
        boolean refused = step.notice().map(Step.Notice::bad).orElse(false);
        return had.isEmpty() || refused
                ? step
                : step.saying(step.notice().map(Step.Notice::text).orElse("") + " "
                        + around.say("placing.replaces", had.get().printDecimal()));
    }

    private Step newStation(Surroundings around) {
        String name = new PlacingWords(placing, around).stationName(waypoint());
        return decided(new Decision.NewStation(row().spot().orElseThrow(), name), around);
    }

    private Step restAsPlaces(Surroundings around) {
        int count = placing.undecided();
        Placing next = placing.restAsPlaces(at.kind(), row().number());
        return Step.stay(after(next, waypoint(), lastNew(next)))
                .saying(around.say("placing.rest_placed", count, Looks.word(around, "obstacle", at.kind())));
    }

    /** The last of the places that were just put after the chosen row. */
    private PlacingRow lastNew(Placing next) {
        int last = row().number() + next.line().size() - placing.line().size();
        return new PlacingRow(last, Optional.of(next.line().get(last - 1)), Optional.empty(), Optional.empty());
    }

    /** Another kind for the chosen waypoint where it is a new place, else for the next one. */
    private Step turned(int by) {
        List<ObstacleKind> kinds = List.of(ObstacleKind.values());
        ObstacleKind next = kinds.get(Math.floorMod(kinds.indexOf(kind()) + by, kinds.size()));
        return placing.decisions().get(waypoint()) instanceof Decision.NewPlace
                ? Step.stay(after(placing.kind(waypoint(), next), waypoint(), row()))
                : Step.stay(with(new At(at.waypoints(), at.line(), at.onLine(), next)));
    }

    private Step undone(Surroundings around) {
        Past last = past.get(past.size() - 1);
        At where = moved(last.placing(), last.waypoint(), row());
        PlacingScreen before = new PlacingScreen(go, last.placing(), where, past.subList(0, past.size() - 1), state);
        PlacingWords words = new PlacingWords(last.placing(), around);
        return Step.stay(before)
                .saying(around.say("placing.undone", words.waypoint(last.waypoint()), words.state(last.waypoint())));
    }

    private Step save() {
        return Step.stay(in(FormScreen.State.SENDING)).doing(new Ask.PlaceWaypoints(placing));
    }

    private Step read(Surroundings around) {
        PlacingWords words = new PlacingWords(placing, around);
        return Step.open(this, new Go.Read(words.waypoint(waypoint()), words.about(waypoint())));
    }

    private Step help(Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        for (String key : List.of("how", "heights", "again", "save")) {
            text.add(Paragraph.of(around.say("placing.help." + key)));
            text.add(Paragraph.gap());
        }
        text.add(Paragraph.of(go.file(), Style.STRONG));
        go.remarks().forEach(remark -> text.add(Paragraph.of(remark)));
        if (go.remarks().isEmpty()) {
            text.add(Paragraph.of(around.say("placing.no_remarks"), Style.FAINT));
        }
        return Step.open(this, new Go.Read(around.say("placing.help"), text));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened && !go.remarks().isEmpty()) {
            return Step.stay(this)
                    .saying(around.say("placing.remarks", go.remarks().size()));
        }
        if (message instanceof Told.Saved) {
            return saved(around);
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(in(FormScreen.State.EDITING)).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return at.onLine()
                    ? onLine(
                            at.line().moved(wheel.rows(), PlacingRow.of(placing).size()))
                    : onWaypoint(at.waypoints()
                            .moved(wheel.rows(), placing.waypoints().size()));
        }
        return message instanceof Message.MousePressed mouse ? pressed(mouse, around) : Step.stay(this);
    }

    private Step saved(Surroundings around) {
        PlacingScreen done = in(FormScreen.State.DONE);
        String told =
                around.say("placing.saved", placing.taken(), placing.waypoints().size() - placing.taken());
        Step step = placing.isNew()
                ? Step.replace(done, new Go.OneCanyon(placing.canyon().canyon().uid()))
                : Step.back(done);
        return step.saying(told);
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        boolean onLine = around.wide() ? mouse.column() >= PlacingView.leftWidth(around.columns()) : at.onLine();
        ListState list = onLine ? at.line() : at.waypoints();
        int size = onLine ? PlacingRow.of(placing).size() : placing.waypoints().size();
        int height = PlacingView.listRows(around.rows() - 2);
        int inList = mouse.row() - PlacingView.HEAD_ROWS;
        int index = list.shownIn(height, size).top() + inList;
        if (inList < 0 || inList >= height || index >= size) {
            return Step.stay(this);
        }
        ListState to = list.at(index, size);
        return Step.stay(
                with(onLine ? new At(at.waypoints(), to, true, at.kind()) : new At(to, at.line(), false, at.kind())));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        new PlacingView(this, around).draw(canvas);
    }
}
