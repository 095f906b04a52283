package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.amend.Contents;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Finding;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.FormView;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.Searching;

/**
 * All canyons, or those that are looked for, with the chosen one beside the list where there is room.
 *
 * @param found what the last search found; empty until it has
 * @param list which row is chosen
 * @param search the words
 * @param filter what else must hold
 * @param form the form for the filter, where it is open
 * @param detail the canyon of the chosen row, once it is loaded
 * @param awaited what it waits for
 */
record CanyonsScreen(
        Optional<Told.CanyonsFound> found,
        ListState list,
        Searching search,
        CanyonFilter filter,
        Optional<Filled> form,
        Optional<Told.CanyonLoaded> detail,
        Awaited awaited)
        implements Screen {

    /** Nothing found yet. */
    static CanyonsScreen opened() {
        return new CanyonsScreen(
                Optional.empty(),
                ListState.START,
                Searching.NONE,
                CanyonFilter.NONE,
                Optional.empty(),
                Optional.empty(),
                Awaited.NOTHING);
    }

    /** What was found, as rows. */
    CanyonHits hits() {
        return found.map(answer -> new CanyonHits(answer.found())).orElse(CanyonHits.NONE);
    }

    /** Whether there is no row. */
    boolean none() {
        return hits().size() == 0;
    }

    /** The index of the chosen row; 0 where there is none. */
    int chosen() {
        return Math.max(0, Math.min(list.chosen(), hits().size() - 1));
    }

    /** How many canyons may fit. */
    int unknown() {
        return hits().found().unknown();
    }

    private Finding finding() {
        return new Finding(search.words(), filter);
    }

    @Override
    public String title(Surroundings around) {
        return form.isPresent()
                ? around.say("filter_form.title")
                : around.say("canyons.title")
                        + found.map(answer -> "  " + hits().count(answer.all(), around))
                                .orElse("");
    }

    @Override
    public boolean writing() {
        return search.open() || form.isPresent();
    }

    @Override
    public boolean waiting() {
        return found.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        if (form.isPresent()) {
            return formBindings(around);
        }
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open"), this::open)
                .unless(none(), around.say("canyons.nothing_to_open")));
        if (search.open()) {
            bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.clear_search"), this::cleared));
            bindings.add(
                    Binding.of(Key.Named.TAB, around.say("key.search_done"), () -> Step.stay(with(search.closed()))));
            bindings.addAll(moves(around).stream()
                    .filter(binding -> !binding.keys().get(0).writes())
                    .toList());
            return bindings;
        }
        bindings.add(Binding.of(Key.of('/'), around.say("key.search"), () -> Step.stay(with(search.opened()))));
        bindings.addAll(filterBindings(around));
        bindings.add(Binding.of(Key.of('s'), around.say("key.stations"), () -> Step.open(this, new Go.Stations())));
        bindings.add(Binding.of(Key.of('p'), around.say("key.parts"), () -> Step.open(this, new Go.Parts())));
        bindings.add(Binding.of(
                Key.of('D'), around.say("key.due"), () -> Step.open(this, new Go.DueParts(Optional.empty()))));
        bindings.add(Binding.of(Key.of('n'), around.say("key.new_canyon"), this::enterNew)
                .unless(around.readOnly(), around.say("read_only.refused"))
                .unless(found.isEmpty(), around.say("loading")));
        bindings.add(Binding.of(Key.of('g'), around.say("key.waypoints"), this::readWaypoints)
                .unless(around.readOnly(), around.say("read_only.refused"))
                .unless(found.isEmpty(), around.say("loading")));
        bindings.add(Binding.of(
                Key.of('t'), around.say("key.trips"), () -> Step.open(this, new Go.Trips(Optional.empty()))));
        bindings.add(Binding.of(
                Key.of('o'), around.say("key.given"), () -> Step.open(this, new Go.Given(Optional.empty()))));
        bindings.add(Binding.of(Key.of('w'), around.say("key.write_list"), this::write)
                .unless(hits().found().canyons().isEmpty(), around.say("canyons.nothing_to_write")));
        bindings.add(Binding.of(Key.of('S'), around.say("key.sheets"), this::writeSheets)
                .unless(hits().found().canyons().isEmpty(), around.say("canyons.nothing_to_write")));
        if (!search.words().isEmpty()) {
            bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.clear_search"), this::cleared));
        }
        bindings.add(Amending.taking(false, this::takeOut, around)
                .unless(hits().station(chosen()).isPresent(), around.say("canyons.take_out_station"))
                .unless(loadedDetail().isEmpty(), around.say(none() ? "canyons.nothing_to_open" : "loading"))
                .quiet());
        bindings.addAll(Amending.turning(this, Optional.empty(), "", around));
        bindings.add(Binding.of(
                        Key.Named.F5,
                        around.say("key.reload"),
                        () -> Step.stay(this).doing(find()))
                .quiet());
        bindings.addAll(
                DeskKeys.of(this, found.filter(answer -> answer.all() == 0).isPresent(), around));
        bindings.addAll(moves(around));
        return bindings;
    }

    private List<Binding> filterBindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.of('f'), around.say("key.filter"), () -> openForm(around)));
        if (!filter.isNone()) {
            bindings.add(Binding.of(Key.of('c'), around.say("key.clear_filter"), () -> filteredBy(CanyonFilter.NONE)));
            if (unknown() > 0) {
                bindings.add(Binding.of(
                        Key.of('m'),
                        around.say(filter.unknownToo() ? "key.without_unknown" : "key.unknown_too"),
                        () -> filteredBy(filter.withUnknown(!filter.unknownToo()))));
            }
        }
        return bindings;
    }

    private List<Binding> formBindings(Surroundings around) {
        return List.of(
                Binding.of(Key.ctrl('s'), around.say("key.apply"), () -> apply(around))
                        .or(Key.of(Key.Named.F2)),
                Binding.of(Key.Named.ESCAPE, around.say("key.leave_as_was"), () -> Step.stay(form(Optional.empty()))),
                Binding.of(
                        Key.Named.TAB,
                        around.say("key.next_field"),
                        () -> Step.stay(changed(form.orElseThrow().last().moved(1)))),
                Binding.of(
                                Key.shift(Key.Named.TAB),
                                around.say("key.previous_field"),
                                () -> Step.stay(
                                        changed(form.orElseThrow().last().moved(-1))))
                        .quiet());
    }

    private List<Binding> moves(Surroundings around) {
        return Lists.bindings(list, hits().size(), around.rows() - 4, around, this::moved);
    }

    private Ask find() {
        return new Ask.FindCanyons(finding());
    }

    private Step open() {
        return none() ? Step.stay(with(search.closed())) : Step.open(with(search.closed()), hits().go(chosen()));
    }

    private Step enterNew() {
        Uid spare = found.orElseThrow().spare();
        CanyonsScreen waits = new CanyonsScreen(found, list, search, filter, form, detail, Awaited.entered(spare));
        return Step.open(waits, new Go.EditCanyon(spare, Optional.empty()));
    }

    private Step takeOut() {
        CanyonRecord record = loadedDetail().orElseThrow().record();
        return Step.open(this, new Go.TakeOut(ThingBody.of(record.canyon()), Contents.of(record)));
    }

    private Step readWaypoints() {
        return Step.open(
                this, new Go.ReadWaypoints(Optional.empty(), found.orElseThrow().spare()));
    }

    private Step write() {
        Finding shown = found.orElseThrow().finding();
        return Step.open(
                this, new Go.WriteCanyons(shown, hits().found().canyons().size()));
    }

    private Step writeSheets() {
        return Step.open(
                this,
                new Go.WriteSheets(
                        found.orElseThrow().finding(), hits().found().canyons().size()));
    }

    private Step openForm(Surroundings around) {
        Form empty = FilterForm.of(filter, around);
        return Step.stay(form(Optional.of(new Filled(empty, empty))));
    }

    private Step apply(Surroundings around) {
        Filled filled = form.orElseThrow();
        Optional<String> fault = filled.last().fault(around);
        if (fault.isPresent()) {
            return Step.stay(changed(filled.last().atFault())).refusing(fault.get());
        }
        return form(Optional.empty()).filteredBy(FilterForm.filled(filter, filled, around));
    }

    private Step filteredBy(CanyonFilter other) {
        CanyonsScreen next = new CanyonsScreen(found, ListState.START, search, other, form, detail, awaited);
        return Step.stay(next).doing(next.find());
    }

    private Step cleared() {
        return searched(Searching.NONE);
    }

    private Step moved(ListState to) {
        return new CanyonsScreen(found, to, search, filter, form, detail, awaited).loadingDetail();
    }

    private Step loadingDetail() {
        Step step = Step.stay(this);
        return none() ? step : step.doing(new Ask.LoadCanyon(hits().canyonOf(chosen())));
    }

    /** The canyon of the chosen row, where it is loaded already. */
    Optional<Told.CanyonLoaded> loadedDetail() {
        return none()
                ? Optional.empty()
                : detail.filter(told -> told.record().canyon().uid().equals(hits().canyonOf(chosen())));
    }

    private CanyonsScreen with(Searching words) {
        return new CanyonsScreen(found, list, words, filter, form, detail, awaited);
    }

    private CanyonsScreen form(Optional<Filled> other) {
        return new CanyonsScreen(found, list, search, filter, other, detail, awaited);
    }

    private CanyonsScreen changed(Form last) {
        return form(form.map(filled -> new Filled(filled.first(), last)));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            return Step.stay(this).doing(find()).doing(new Keep.ListAll());
        }
        if (message instanceof Message.Returned) {
            return Step.stay(this).doing(find());
        }
        if (message instanceof Told.DraftsListed listed) {
            return DeskKeys.waiting(this, listed, around);
        }
        if (message instanceof Told.CanyonsFound answer) {
            return answer.finding().equals(finding()) ? foundThose(answer) : Step.stay(this);
        }
        if (message instanceof Told.CanyonLoaded loaded) {
            return Step.stay(new CanyonsScreen(found, list, search, filter, form, Optional.of(loaded), awaited));
        }
        if (message instanceof Told.Turned turned) {
            return Step.stay(this).doing(find()).saying(Amending.said(turned, Optional.empty(), around));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (form.isPresent()) {
            return inForm(message, form.get().last());
        }
        if (message instanceof Message.KeyPressed pressed && search.open()) {
            return searched(search.after(pressed.key()));
        }
        if (message instanceof Message.Pasted pasted && search.open()) {
            return searched(search.pasted(pasted.text()));
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), hits().size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            return pressed(mouse, around);
        }
        return Step.stay(this);
    }

    private Step inForm(Message message, Form last) {
        if (message instanceof Message.KeyPressed pressed) {
            return Step.stay(changed(last.after(pressed.key())));
        }
        if (message instanceof Message.Pasted pasted) {
            return Step.stay(changed(last.pasted(pasted.text())));
        }
        if (message instanceof Message.Wheel wheel) {
            return Step.stay(changed(last.moved(wheel.rows() > 0 ? 1 : -1)));
        }
        return Step.stay(this);
    }

    private Step foundThose(Told.CanyonsFound answer) {
        ListState kept = awaited.placed(list, hits().uids(), new CanyonHits(answer.found()).uids());
        return new CanyonsScreen(Optional.of(answer), kept, search, filter, form, detail, Awaited.NOTHING)
                .loadingDetail();
    }

    private Step searched(Searching words) {
        CanyonsScreen next = new CanyonsScreen(found, ListState.START, words, filter, form, detail, awaited);
        return Step.stay(next).doing(next.find());
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int row = new CanyonsView(this, around).rowAt(mouse.row());
        if (row < 0 || row >= hits().size()) {
            return Step.stay(this);
        }
        return row == list.chosen() ? open() : moved(list.at(row, hits().size()));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (form.isPresent()) {
            FormView.draw(
                    canvas.part(0, 1, canvas.rows(), canvas.columns() - 2),
                    form.get().last(),
                    around);
        } else {
            new CanyonsView(this, around).draw(canvas);
        }
    }
}
