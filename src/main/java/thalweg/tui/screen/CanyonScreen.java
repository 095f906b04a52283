package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.amend.Contents;
import thalweg.body.ThingBody;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Reorder;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.StationRecord;
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
 * One canyon: its line, place by place with the stations under each, and the chosen one beside it where there is room.
 *
 * @param uid of the canyon
 * @param loaded the canyon, once it is loaded
 * @param list which row is chosen
 * @param awaited what it waits for
 */
record CanyonScreen(Uid uid, Optional<Told.CanyonLoaded> loaded, ListState list, Awaited awaited) implements Screen {

    private static final int HEAD_ROWS = 4;

    /** Not loaded yet. */
    static CanyonScreen opened(Uid uid) {
        return new CanyonScreen(uid, Optional.empty(), ListState.START, Awaited.NOTHING);
    }

    /** One row of the line: a place, or a station of it. */
    private record Row(LineRecord place, Optional<StationRecord> station) {

        Uid uid() {
            return station.map(one -> one.station().uid())
                    .orElse(place.obstacle().uid());
        }

        ThingBody body() {
            return station.map(one -> ThingBody.of(one.station())).orElse(ThingBody.of(place.obstacle()));
        }

        Contents contents() {
            return station.map(Contents::of).orElse(Contents.of(place));
        }
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        loaded.ifPresent(told -> told.record().line().forEach(place -> {
            rows.add(new Row(place, Optional.empty()));
            place.stations().forEach(station -> rows.add(new Row(place, Optional.of(station))));
        }));
        return rows;
    }

    private Optional<Row> chosen() {
        List<Row> rows = rows();
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        return loaded.map(told -> told.record().canyon().name())
                .orElse(around.say(awaited.gone() ? "gone" : "loading"));
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty() && !awaited.gone();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String readOnly = around.say("read_only.refused");
        boolean waiting = loaded.isEmpty();
        boolean none = chosen().isEmpty();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open"), () -> open(around))
                .unless(none, around.say("canyon.nothing_to_open")));
        bindings.add(Binding.of(Key.of('w'), around.say("key.sheet"), this::writeSheet)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('p'), around.say("key.profile"), this::profile)
                .unless(none, around.say("profile.none.empty"))
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.of('n'), around.say("key.new_place"), this::newPlace)
                .unless(around.readOnly(), readOnly)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('s'), around.say("key.new_station"), this::newStation)
                .unless(none, around.say("canyon.no_place_for_station"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('e'), around.say("key.edit_place"), this::editPlace)
                .unless(none, around.say("canyon.nothing_to_open"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('c'), around.say("key.edit_canyon"), this::editCanyon)
                .unless(around.readOnly(), readOnly)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('d'), around.say("key.canyon_text"), () -> read(around))
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('g'), around.say("key.waypoints"), this::readWaypoints)
                .unless(around.readOnly(), readOnly)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('r'), around.say("key.rounds"), () -> Step.open(this, new Go.Rounds(uid)))
                .unless(waiting, around.say("loading")));
        bindings.addAll(amending(around));
        bindings.add(Binding.of(Key.of('y'), around.say("key.copy_place"), () -> copy(around))
                .unless(position(around).isEmpty(), around.say("canyon.no_coordinates"))
                .quiet());
        bindings.addAll(LocalKeys.of(this, loaded, chosen().map(Row::place), chosen().flatMap(Row::station), around));
        bindings.addAll(Lists.bindings(list, rows().size(), around.rows() - HEAD_ROWS - 3, around, this::moved));
        return bindings;
    }

    private LocalRecord local() {
        return loaded.orElseThrow().local();
    }

    private List<Binding> amending(Surroundings around) {
        String name = loaded.map(told -> told.record().canyon().name()).orElse("");
        Optional<Row> row = chosen();
        boolean isStation = row.flatMap(Row::station).isPresent();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Amending.taking(false, this::takeOut, around)
                .unless(row.isEmpty(), around.say("canyon.nothing_to_open")));
        bindings.addAll(Amending.turning(this, Optional.of(uid), name, around));
        bindings.add(Binding.of(
                        Key.of('m'),
                        around.say("key.move"),
                        () -> RowKeys.moved(this, record(), row.orElseThrow().uid(), around))
                .unless(!isStation, around.say("canyon.places_move_in_line"))
                .unless(around.readOnly(), around.say("read_only.refused"))
                .quiet());
        String refusal = row.isEmpty() ? around.say("canyon.nothing_to_open") : "";
        bindings.addAll(Amending.shifting(by -> shifted(by, around), refusal, around));
        return bindings;
    }

    private Step takeOut() {
        Row row = chosen().orElseThrow();
        return Step.open(this, new Go.TakeOut(row.body(), row.contents()));
    }

    private Step shifted(int by, Surroundings around) {
        Uid thing = chosen().orElseThrow().uid();
        return awaited.saving()
                ? Step.stay(this)
                : RowKeys.shifted(this, awaiting(Awaited.moved(thing)), record(), thing, by, around);
    }

    private Optional<WhereItIs> position(Surroundings around) {
        Optional<Row> row = chosen();
        return loaded.flatMap(
                told -> WhereItIs.of(told.record(), row.map(Row::place), row.flatMap(Row::station), around));
    }

    private Step copy(Surroundings around) {
        return position(around).orElseThrow().copied(Step.stay(this), around);
    }

    private Step moved(ListState to) {
        return Step.stay(new CanyonScreen(uid, loaded, to, awaited));
    }

    private CanyonScreen awaiting(Awaited next) {
        return new CanyonScreen(uid, loaded, list, next);
    }

    private CanyonRecord record() {
        return loaded.orElseThrow().record();
    }

    private Step open(Surroundings around) {
        Row row = chosen().orElseThrow();
        Optional<StationRecord> station = row.station().isPresent()
                ? row.station()
                : row.place().stations().stream().findFirst();
        return station.map(one ->
                        Step.open(this, new Go.OneStation(uid, one.station().uid())))
                .orElseGet(() -> Step.open(this, new Go.Read(About.placeName(row.place(), around), about(row, around)))
                        .saying(around.say(around.readOnly() ? "canyon.place_read" : "canyon.place_here")));
    }

    /** The profile opens where the list is. */
    private Step profile() {
        Row row = chosen().orElseThrow();
        Uid at = row.station()
                .map(station -> station.station().uid())
                .orElseGet(() -> row.place().obstacle().uid());
        return Step.open(this, new Go.CanyonProfile(uid, Optional.of(at)));
    }

    private Step read(Surroundings around) {
        return Step.open(this, new Go.Read(title(around), AboutLocal.canyon(record(), local(), around)));
    }

    private List<Paragraph> about(Row row, Surroundings around) {
        List<Paragraph> text = row.station()
                .map(station -> About.station(station, around))
                .orElseGet(() -> About.place(row.place(), around));
        Uid about = row.station()
                .map(station -> station.station().uid())
                .orElse(row.place().obstacle().uid());
        return AboutLocal.withNote(text, local(), about, around);
    }

    private Step writeSheet() {
        return Step.open(this, new Go.WriteSheet(uid, record().canyon().name(), local()));
    }

    private Step readWaypoints() {
        Told.CanyonLoaded told = loaded.orElseThrow();
        return Step.open(this, new Go.ReadWaypoints(Optional.of(told.record()), told.spare()));
    }

    private Step editCanyon() {
        return Step.open(this, new Go.EditCanyon(uid, Optional.of(record().canyon())));
    }

    private Step editPlace() {
        LineRecord place = chosen().orElseThrow().place();
        return Step.open(
                this,
                new Go.EditObstacle(
                        place.obstacle().uid(), uid, place.obstacle().order(), Optional.of(place.obstacle())));
    }

    /** A new place comes after the chosen one. */
    private Step newPlace() {
        List<String> line =
                record().line().stream().map(place -> place.obstacle().order()).toList();
        int at = chosen().map(row -> row.place().number()).orElse(0);
        Uid spare = loaded.orElseThrow().spare();
        return Step.open(
                awaiting(Awaited.entered(spare)),
                new Go.EditObstacle(spare, uid, Reorder.keyAfter(line, at - 1), Optional.empty()));
    }

    /** A new station comes last at its place. */
    private Step newStation() {
        LineRecord place = chosen().orElseThrow().place();
        String last = place.stations().stream()
                .map(station -> station.station().order())
                .reduce("", (one, other) -> other);
        Uid spare = loaded.orElseThrow().spare();
        return Step.open(
                awaiting(Awaited.entered(spare)),
                new Go.EditStation(spare, place.obstacle().uid(), OrderKey.between(last, ""), Optional.empty()));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        Step reload = Step.stay(this).doing(new Ask.LoadCanyon(uid));
        if (message instanceof Message.Opened || message instanceof Message.Returned || message instanceof Told.Saved) {
            return reload;
        }
        if (message instanceof Told.Turned turned) {
            return reload.saying(Amending.said(turned, Optional.of(uid), around));
        }
        if (message instanceof Told.CanyonLoaded told) {
            CanyonScreen next = new CanyonScreen(uid, Optional.of(told), list, Awaited.NOTHING);
            return next.moved(awaited.placed(list, uids(), next.uids()));
        }
        if (message instanceof Told.CanyonGone) {
            return Step.stay(new CanyonScreen(uid, Optional.empty(), list, Awaited.GONE));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(awaiting(Awaited.NOTHING)).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), rows().size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            int height = around.rows() - 2 - HEAD_ROWS;
            int row = list.shownIn(height, rows().size()).top() + mouse.row() - HEAD_ROWS;
            boolean onRow = mouse.row() >= HEAD_ROWS && row < rows().size();
            return !onRow ? Step.stay(this) : row == list.chosen() ? open(around) : moved(list.at(row, rows().size()));
        }
        return Step.stay(this);
    }

    private List<Optional<Uid>> uids() {
        return rows().stream().map(row -> Optional.of(row.uid())).toList();
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty()) {
            Paragraph text = awaited.gone()
                    ? Paragraph.of(around.say("canyon.gone"), Style.ERROR)
                    : Paragraph.of(around.say("loading"), Style.FAINT);
            Paragraph.draw(canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4), List.of(text), 0, around);
            return;
        }
        head(canvas.part(0, 1, HEAD_ROWS - 1, canvas.columns() - 2), around);
        int width = around.wide() ? canvas.columns() * 55 / 100 : canvas.columns();
        Canvas left = canvas.part(HEAD_ROWS, 0, canvas.rows() - HEAD_ROWS, width);
        List<Row> rows = rows();
        if (rows.isEmpty()) {
            Paragraph.draw(
                    left.part(0, 2, left.rows(), left.columns() - 2),
                    List.of(Paragraph.of(around.say("canyon.empty"))),
                    0,
                    around);
        }
        boolean bar = rows.size() > left.rows();
        Canvas heading = canvas.part(HEAD_ROWS - 1, 2, 1, width - 2 - (bar ? 1 : 0));
        LineColumns.row(
                heading,
                around.say("canyon.line"),
                around.say("canyon.rope"),
                around.say("canyon.state"),
                Style.FAINT,
                Style.FAINT);
        Lists.draw(
                left,
                list,
                rows.size(),
                true,
                around,
                (line, index, style) -> row(line, rows.get(index), style, around));
        if (around.wide()) {
            Canvas right = canvas.part(HEAD_ROWS, width + 1, canvas.rows() - HEAD_ROWS, canvas.columns() - width - 2);
            List<Paragraph> text = chosen().map(row -> about(row, around))
                    .orElseGet(() -> AboutLocal.canyon(record(), local(), around));
            chosen().ifPresent(row -> ProfilePane.below(
                    right,
                    Paragraph.height(text, right.columns()),
                    record(),
                    row.place().number() - 1,
                    around));
            Paragraph.draw(right, text, 0, around);
        }
    }

    private void head(Canvas canvas, Surroundings around) {
        CanyonRecord record = record();
        String grades = around.say(
                "canyon.grades",
                Looks.orUnknown(around, record.canyon().french().map(grade -> grade.print())),
                Looks.orUnknown(around, record.canyon().american().map(grade -> grade.print())),
                Looks.orUnknown(around, record.longestDrop().map(drop -> drop.print(around.units()))));
        canvas.fit(0, 0, canvas.columns(), grades, Style.NORMAL);
        canvas.fit(1, 0, canvas.columns(), About.news(record, around), Style.NORMAL);
        if (record.canyon().invented()) {
            canvas.fit(2, 0, canvas.columns(), around.say("invented"), Style.CAUTION);
        }
    }

    private void row(Canvas line, Row row, Style style, Surroundings around) {
        if (row.station().isEmpty()) {
            String state = row.place().stations().isEmpty()
                            && row.place().obstacle().kind().usuallyRigged()
                    ? around.say("canyon.no_station")
                    : "";
            String name = About.placeOnLine(row.place(), around);
            Uid about = row.place().obstacle().uid();
            LineColumns.row(
                    line,
                    AboutLocal.marked(name, local(), about, LineColumns.nameRoom(line), around),
                    "",
                    state,
                    style,
                    style);
            return;
        }
        StationRecord station = row.station().get();
        String rope = Looks.orUnknown(around, station.station().ropeNeeded().map(one -> one.print(around.units())));
        String state = ConditionWords.told(station.standing(), around.phrases());
        Style coloured = style == Style.SELECTED ? style : Looks.style(station.standing());
        String old = station.hasOldAnalysis() ? ", " + around.say("canyon.rig_old") : "";
        String name = "   " + station.station().name() + old + DueMark.of(station, around);
        Uid about = station.station().uid();
        LineColumns.row(
                line,
                AboutLocal.marked(name, local(), about, LineColumns.nameRoom(line), around),
                rope,
                state,
                style,
                coloured);
    }
}
