package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRow;
import thalweg.text.Fold;
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
import thalweg.tui.widget.Searching;

/**
 * All canyons, or those that words find, with the chosen one beside the list where there is room.
 *
 * @param found what the last search found; empty until it has
 * @param list which row is chosen
 * @param search the words
 * @param detail the chosen canyon, once it is loaded
 */
record CanyonsScreen(
        Optional<Told.CanyonsFound> found, ListState list, Searching search, Optional<Told.CanyonLoaded> detail)
        implements Screen {

    /** Nothing found yet. */
    static CanyonsScreen opened() {
        return new CanyonsScreen(Optional.empty(), ListState.START, Searching.NONE, Optional.empty());
    }

    private List<CanyonRow> rows() {
        return found.map(Told.CanyonsFound::rows).orElse(List.of());
    }

    private Optional<CanyonRow> chosen() {
        List<CanyonRow> rows = rows();
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        int all = found.map(Told.CanyonsFound::all).orElse(0);
        int shown = rows().size();
        String count = shown == all ? Integer.toString(all) : around.say("canyons.some", shown, all);
        return found.isEmpty() ? around.say("canyons.title") : around.say("canyons.title") + "  " + count;
    }

    @Override
    public boolean writing() {
        return search.open();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        boolean none = chosen().isEmpty();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open"), this::open)
                .unless(none, around.say("canyons.nothing_to_open")));
        if (search.open()) {
            bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.clear_search"), this::cleared));
            bindings.addAll(Lists.bindings(list, rows().size(), around.rows() - 4, around, this::moved).stream()
                    .filter(binding -> !binding.keys().get(0).writes())
                    .toList());
            return bindings;
        }
        bindings.add(Binding.of(Key.of('/'), around.say("key.search"), () -> Step.stay(with(search.opened()))));
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
        if (!search.words().isEmpty()) {
            bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.clear_search"), this::cleared));
        }
        bindings.add(Binding.of(
                        Key.Named.F5,
                        around.say("key.reload"),
                        () -> Step.stay(this).doing(find(search)))
                .quiet());
        bindings.addAll(Lists.bindings(list, rows().size(), around.rows() - 4, around, this::moved));
        return bindings;
    }

    private static Ask find(Searching words) {
        return new Ask.FindCanyons(words.words());
    }

    private Step open() {
        Step step = Step.stay(with(search.closed()));
        return chosen().map(row -> Step.open(with(search.closed()), new Go.OneCanyon(row.uid())))
                .orElse(step);
    }

    private Step enterNew() {
        Uid spare = found.orElseThrow().spare();
        return Step.open(this, new Go.EditCanyon(spare, Optional.empty()));
    }

    private Step readWaypoints() {
        return Step.open(
                this, new Go.ReadWaypoints(Optional.empty(), found.orElseThrow().spare()));
    }

    private Step cleared() {
        Searching none = Searching.NONE;
        return Step.stay(new CanyonsScreen(found, ListState.START, none, detail))
                .doing(find(none));
    }

    private Step moved(ListState to) {
        CanyonsScreen next = new CanyonsScreen(found, to, search, detail);
        return next.loadingDetail();
    }

    private Step loadingDetail() {
        Step step = Step.stay(this);
        return chosen().map(row -> step.doing(new Ask.LoadCanyon(row.uid()))).orElse(step);
    }

    private CanyonsScreen with(Searching words) {
        return new CanyonsScreen(found, list, words, detail);
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(find(search));
        }
        if (message instanceof Told.CanyonsFound answer) {
            return answer.words().equals(search.words()) ? foundThose(answer) : Step.stay(this);
        }
        if (message instanceof Told.CanyonLoaded loaded) {
            return Step.stay(new CanyonsScreen(found, list, search, Optional.of(loaded)));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.KeyPressed pressed && search.open()) {
            return searched(search.after(pressed.key()));
        }
        if (message instanceof Message.Pasted pasted && search.open()) {
            return searched(search.pasted(pasted.text()));
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), rows().size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            return pressed(mouse, around);
        }
        return Step.stay(this);
    }

    private Step foundThose(Told.CanyonsFound answer) {
        Optional<Uid> before = chosen().map(CanyonRow::uid);
        List<Uid> uids = answer.rows().stream().map(CanyonRow::uid).toList();
        int at = before.map(uids::indexOf).filter(index -> index >= 0).orElse(list.chosen());
        ListState kept = list.at(at, answer.rows().size());
        return new CanyonsScreen(Optional.of(answer), kept, search, detail).loadingDetail();
    }

    private Step searched(Searching words) {
        return Step.stay(new CanyonsScreen(found, ListState.START, words, detail))
                .doing(find(words));
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int listRows = listHeight(around.rows() - 2);
        int row = list.shownIn(listRows, rows().size()).top() + mouse.row() - 1;
        if (mouse.row() < 1 || mouse.row() > listRows || row >= rows().size()) {
            return Step.stay(this);
        }
        return row == list.chosen() ? open() : moved(list.at(row, rows().size()));
    }

    private boolean searchShown() {
        return search.open() || !search.words().isEmpty();
    }

    private int listHeight(int bodyRows) {
        return bodyRows - 1 - (searchShown() ? 1 : 0);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        int listWidth = around.wide() ? canvas.columns() / 2 : canvas.columns();
        Canvas left = canvas.part(0, 0, canvas.rows(), listWidth);
        if (searchShown()) {
            search.draw(left, left.rows() - 1, around);
        }
        if (found.isEmpty()) {
            left.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        if (rows().isEmpty()) {
            boolean empty = found.get().all() == 0;
            List<Paragraph> text = empty ? firstSteps(around) : List.of(Paragraph.of(around.say("canyons.none_found")));
            Paragraph.draw(canvas.part(1, 2, canvas.rows() - 2, canvas.columns() - 4), text, 0, around);
            return;
        }
        CanyonColumns columns = CanyonColumns.of(listWidth - 3, around);
        columns.heading(left.part(0, 2, 1, listWidth - 3));
        Canvas body = left.part(1, 0, listHeight(canvas.rows()), listWidth);
        Lists.draw(
                body,
                list,
                rows().size(),
                true,
                around,
                (line, index, style) -> columns.row(line, rows().get(index), twin(index), style));
        if (around.wide()) {
            drawDetail(canvas.part(0, listWidth + 1, canvas.rows(), canvas.columns() - listWidth - 1), around);
        }
    }

    /** Canyons stand in the order of their names, so that those of the same name are neighbours. */
    private boolean twin(int index) {
        List<CanyonRow> rows = rows();
        String name = Fold.fold(rows.get(index).name());
        return IntStream.of(index - 1, index + 1)
                .filter(other -> other >= 0 && other < rows.size())
                .anyMatch(other -> Fold.fold(rows.get(other).name()).equals(name));
    }

    private void drawDetail(Canvas canvas, Surroundings around) {
        Optional<Told.CanyonLoaded> shown = detail.filter(told -> chosen().filter(
                        row -> row.uid().equals(told.record().canyon().uid()))
                .isPresent());
        List<Paragraph> text = shown.map(told -> AboutLocal.canyon(told.record(), told.local(), around))
                .orElse(List.of());
        Paragraph.draw(canvas, text, 0, around);
    }

    private static List<Paragraph> firstSteps(Surroundings around) {
        return Stream.of("empty.1", "empty.2", "empty.3", "empty.4")
                .flatMap(key -> Stream.of(Paragraph.of(around.say("canyons." + key)), Paragraph.gap()))
                .collect(Collectors.toList());
    }
}
