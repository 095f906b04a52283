package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.InView;
import thalweg.logbook.RowOrder;
import thalweg.logbook.StationRow;
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
import thalweg.tui.widget.Searching;

/**
 * All canyons, or those that are looked for, with the chosen one beside the list where there is room.
 *
 * @param found what the last search found; empty until it has
 * @param rows of the canyons that were found, and which row is chosen
 * @param search the words
 * @param filter what else must hold
 * @param form the form for the filter, where it is open
 * @param detail the canyon of the chosen row, once it is loaded
 * @param awaited what it waits for
 */
record CanyonsScreen(
        Optional<Told.CanyonsFound> found,
        LongList<FoundCanyon> rows,
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
                LongList.none(),
                Searching.NONE,
                CanyonFilter.NONE,
                Optional.empty(),
                Optional.empty(),
                Awaited.NOTHING);
    }

    /** What was found, as rows. */
    CanyonHits hits() {
        List<StationRow> stations =
                found.map(answer -> answer.found().stations()).orElse(List.of());
        boolean more = found.filter(answer -> answer.found().moreStations()).isPresent();
        return new CanyonHits(rows, stations, more);
    }

    /** Whether there is no row. */
    boolean none() {
        return hits().size() == 0;
    }

    /** The index of the chosen row; 0 where there is none. */
    int chosen() {
        return hits().chosen();
    }

    /** How many canyons may fit. */
    int unknown() {
        return found.map(answer -> answer.found().keys().unknown()).orElse(0);
    }

    private Finding finding() {
        return new Finding(search.words(), filter);
    }

    /** Whether the rows are those that are looked for now. */
    boolean current() {
        return found.filter(answer -> answer.finding().equals(finding())).isPresent();
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
        return new CanyonsKeys(this, around).all();
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

    /**
     * Asks for the rows of what is looked for now.
     *
     * @param keeps whether what is chosen stays chosen
     */
    Ask find(boolean keeps, Surroundings around) {
        InView view = keeps
                ? new InView(awaited.row(), hits().chosenKey(), current() ? chosen() : 0, around.rows())
                : InView.top(around.rows());
        return new Ask.FindCanyons(finding(), view, keeps);
    }

    /** Whether the chosen row is one of those that are looked for, and read. */
    boolean openable() {
        return current() && hits().go(chosen()).isPresent();
    }

    Step open() {
        return openable() ? Step.open(with(search.closed()), hits().go(chosen()).orElseThrow()) : Step.stay(this);
    }

    Step openForm(Surroundings around) {
        Form empty = FilterForm.of(filter, around);
        return Step.stay(form(Optional.of(new Filled(empty, empty))));
    }

    private Step apply(Surroundings around) {
        Filled filled = form.orElseThrow();
        Optional<String> fault = filled.last().fault(around);
        if (fault.isPresent()) {
            return Step.stay(changed(filled.last().atFault())).refusing(fault.get());
        }
        return form(Optional.empty()).filteredBy(FilterForm.filled(filter, filled, around), false, around);
    }

    Step filteredBy(CanyonFilter other, boolean keeps, Surroundings around) {
        CanyonsScreen next = new CanyonsScreen(found, rows, search, other, form, detail, awaited);
        return Step.stay(next).doing(next.find(keeps, around));
    }

    /** What the words find begins at the top; without words, what was chosen stays chosen. */
    private Step searched(Searching words, Surroundings around) {
        CanyonsScreen next = with(words);
        return Step.stay(next).doing(next.find(words.words().isEmpty(), around));
    }

    Step cleared(Surroundings around) {
        return searched(Searching.NONE, around);
    }

    Step moved(ListState to, Surroundings around) {
        return with(rows.moved(to)).reading(around);
    }

    /** Asks for rows near the view that are missing, and for the canyon of the chosen one. */
    private Step reading(Surroundings around) {
        RowOrder wanted = rows.wanted(around.rows());
        Step step = Step.stay(this);
        Optional<CanyonFilter> shown = found.map(answer -> answer.finding().filter());
        return wanted.size() == 0
                ? loadingDetail(step)
                : loadingDetail(step.doing(new Ask.ReadCanyons(wanted, shown.orElseThrow())));
    }

    private Step loadingDetail(Step step) {
        return hits().canyonOf(chosen())
                .map(canyon -> step.doing(new Ask.LoadCanyon(canyon)))
                .orElse(step);
    }

    /** The canyon of the chosen row, where it is loaded already. */
    Optional<Told.CanyonLoaded> loadedDetail() {
        Optional<Uid> chosen = hits().canyonOf(chosen());
        return detail.filter(
                told -> chosen.equals(Optional.of(told.record().canyon().uid())));
    }

    private CanyonsScreen with(LongList<FoundCanyon> other) {
        return new CanyonsScreen(found, other, search, filter, form, detail, awaited);
    }

    CanyonsScreen with(Searching words) {
        return new CanyonsScreen(found, rows, words, filter, form, detail, awaited);
    }

    CanyonsScreen awaiting(Awaited other) {
        return new CanyonsScreen(found, rows, search, filter, form, detail, other);
    }

    private CanyonsScreen form(Optional<Filled> other) {
        return new CanyonsScreen(found, rows, search, filter, other, detail, awaited);
    }

    private CanyonsScreen changed(Form last) {
        return form(form.map(filled -> new Filled(filled.first(), last)));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            return Step.stay(this).doing(find(true, around)).doing(new Keep.ListAll());
        }
        if (message instanceof Message.Returned) {
            return Step.stay(this).doing(find(true, around));
        }
        if (message instanceof Told.DraftsListed listed) {
            return DeskKeys.waiting(this, listed, around);
        }
        if (message instanceof Told.CanyonsFound answer) {
            return answer.finding().equals(finding()) ? foundThose(answer, around) : Step.stay(this);
        }
        if (message instanceof Told.CanyonsRead told) {
            return read(told, around);
        }
        if (message instanceof Told.CanyonLoaded loaded) {
            return Step.stay(new CanyonsScreen(found, rows, search, filter, form, Optional.of(loaded), awaited));
        }
        if (message instanceof Told.Turned turned) {
            return Step.stay(this).doing(find(true, around)).saying(Amending.said(turned, Optional.empty(), around));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (form.isPresent()) {
            return inForm(message, form.get().last());
        }
        if (message instanceof Message.KeyPressed pressed && search.open()) {
            return searched(search.after(pressed.key()), around);
        }
        if (message instanceof Message.Pasted pasted && search.open()) {
            return searched(search.pasted(pasted.text()), around);
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(rows.state().moved(wheel.rows(), hits().size()), around);
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

    private Step foundThose(Told.CanyonsFound answer, Surroundings around) {
        LongList<FoundCanyon> placed = CanyonHits.of(answer.found(), rows.state())
                .placed(answer, hits())
                .canyons();
        return new CanyonsScreen(Optional.of(answer), placed, search, filter, form, detail, Awaited.NOTHING)
                .reading(around);
    }

    /** What was asked for under another filter says of no canyon whether it fits now. */
    private Step read(Told.CanyonsRead told, Surroundings around) {
        boolean fits = found.filter(
                        answer -> answer.finding().filter().equals(told.asked().filter()))
                .isPresent();
        CanyonsScreen next = fits ? with(rows.with(told.rows(), around.rows())) : this;
        Step step = Step.stay(next);
        return loadedDetail().isPresent() ? step : next.loadingDetail(step);
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int row = new CanyonsView(this, around).rowAt(mouse.row());
        if (row < 0 || row >= hits().size()) {
            return Step.stay(this);
        }
        return row == chosen() ? open() : moved(rows.state().at(row, hits().size()), around);
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
