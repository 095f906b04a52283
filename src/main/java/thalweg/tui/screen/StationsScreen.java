package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import thalweg.logbook.ListedStation;
import thalweg.logbook.StationOrder;
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
 * The stations of all canyons, those first that nobody has looked at for longest.
 *
 * @param order by which they are sorted
 * @param all how many there are, whatever is looked for; empty until they are found
 * @param rows that were found
 * @param search the words
 */
record StationsScreen(StationOrder order, Optional<Integer> all, LongList<ListedStation> rows, Searching search)
        implements Screen {

    /** One after the other. */
    private static final List<StationOrder> ORDERS = List.of(StationOrder.values());

    private static final int ABOUT_ROWS = 3;
    private static final int WIDTH_IN_HUNDREDTHS = 65;

    static StationsScreen opened() {
        return new StationsScreen(StationOrder.LOOKED, Optional.empty(), LongList.none(), Searching.NONE);
    }

    @Override
    public String title(Surroundings around) {
        String title = around.say("stations.title");
        if (all.isEmpty() || rows.size() == 0) {
            return title;
        }
        String key = rows.size() == all.get() ? "stations.position" : "stations.position_found";
        return title + "  "
                + around.say(key, Looks.counted(around, rows.state().chosen() + 1), Looks.counted(around, rows.size()))
                + ", " + Looks.word(around, "stations.order", order);
    }

    @Override
    public boolean writing() {
        return search.open();
    }

    @Override
    public boolean waiting() {
        return all.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        boolean none = rows.size() == 0;
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open_station"), this::open)
                .unless(rows.chosen().isEmpty(), around.say(none ? "stations.nothing_to_open" : "loading")));
        bindings.add(
                search.words().isEmpty()
                        ? Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this))
                        : Binding.of(
                                Key.Named.ESCAPE,
                                around.say("key.clear_search"),
                                () -> searched(Searching.NONE, around)));
        List<Binding> moves = Lists.bindings(rows.state(), rows.size(), page(around), around, to -> moved(to, around));
        if (search.open()) {
            bindings.add(
                    Binding.of(Key.Named.TAB, around.say("key.search_done"), () -> Step.stay(with(search.closed()))));
            moves.stream().filter(binding -> !binding.keys().get(0).writes()).forEach(bindings::add);
            return bindings;
        }
        StationOrder next = ORDERS.get((ORDERS.indexOf(order) + 1) % ORDERS.size());
        bindings.add(Binding.of(
                Key.of('s'),
                around.say("key.next_order", Looks.word(around, "stations.by", next)),
                () -> sorted(next, around)));
        bindings.add(Binding.of(Key.of('/'), around.say("key.search"), () -> Step.stay(with(search.opened()))));
        bindings.add(Binding.of(
                        Key.of('w'),
                        around.say("key.write_list"),
                        () -> Step.open(this, new Go.WriteStations(search.words(), order)))
                .unless(none, around.say("stations.nothing_to_write")));
        bindings.add(Binding.of(
                        Key.Named.F5,
                        around.say("key.reload"),
                        () -> Step.stay(this).doing(find(around)))
                .quiet());
        bindings.addAll(moves);
        return bindings;
    }

    private Ask.FindStations find(Surroundings around) {
        return find(rows.chosenKey(), around);
    }

    /**
     * @param kept what stays chosen; empty for the top of the list
     */
    private Ask.FindStations find(OptionalLong kept, Surroundings around) {
        return new Ask.FindStations(search.words(), order, kept, page(around), around.settings());
    }

    private Step open() {
        ListedStation row = rows.chosen().orElseThrow();
        return Step.open(with(search.closed()), new Go.OneStation(row.canyon().uid(), row.uid()));
    }

    /** Whoever sorts wants to see what comes first. */
    private Step sorted(StationOrder other, Surroundings around) {
        StationsScreen next = new StationsScreen(other, all, rows, search);
        return Step.stay(next).doing(next.find(OptionalLong.empty(), around));
    }

    /** What the words find begins at the top; without words, what was chosen stays chosen. */
    private Step searched(Searching words, Surroundings around) {
        StationsScreen next = with(words);
        OptionalLong kept = words.words().isEmpty() ? rows.chosenKey() : OptionalLong.empty();
        return Step.stay(next).doing(next.find(kept, around));
    }

    private Step moved(ListState to, Surroundings around) {
        StationsScreen next = with(rows.moved(to));
        var wanted = next.rows.wanted(page(around));
        Step step = Step.stay(next);
        return wanted.size() == 0 ? step : step.doing(new Ask.ReadStations(wanted, around.settings()));
    }

    private StationsScreen with(Searching words) {
        return new StationsScreen(order, all, rows, words);
    }

    private StationsScreen with(LongList<ListedStation> other) {
        return new StationsScreen(order, all, other, search);
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(find(around));
        }
        if (message instanceof Told.StationsFound told) {
            return Step.stay(told.asked().sameList(find(around)) ? with(told) : this);
        }
        if (message instanceof Told.StationsRead told) {
            return Step.stay(with(rows.with(told.rows(), page(around))));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.KeyPressed pressed && search.open()) {
            return searched(search.after(pressed.key()), around);
        }
        if (message instanceof Message.Pasted pasted && search.open()) {
            return searched(search.pasted(pasted.text()), around);
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(rows.state().moved(wheel.rows(), rows.size()), around);
        }
        if (message instanceof Message.MousePressed mouse) {
            return pressed(mouse, around);
        }
        return Step.stay(this);
    }

    private StationsScreen with(Told.StationsFound told) {
        ListState at = rows.state().at(told.chosen(), told.order().size());
        return new StationsScreen(
                order, Optional.of(told.all()), new LongList<>(told.order(), told.rows(), at), search);
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int height = listHeight(around.rows() - 2, around);
        int row = rows.state().shownIn(height, rows.size()).top() + mouse.row() - 1;
        if (mouse.row() < 1 || mouse.row() > height || row >= rows.size()) {
            return Step.stay(this);
        }
        return row == rows.state().chosen() && rows.chosen().isPresent()
                ? open()
                : moved(rows.state().at(row, rows.size()), around);
    }

    private static int listHeight(int bodyRows, Surroundings around) {
        return bodyRows - 2 - (around.wide() ? 0 : ABOUT_ROWS);
    }

    private static int page(Surroundings around) {
        return Math.max(1, listHeight(around.rows() - 2, around));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        int width = around.wide() ? canvas.columns() * WIDTH_IN_HUNDREDTHS / 100 : canvas.columns();
        Canvas left = canvas.part(0, 0, canvas.rows(), width);
        if (search.open() || !search.words().isEmpty()) {
            search.draw(left, left.rows() - 1, around);
        }
        if (all.isEmpty()) {
            left.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        if (rows.size() == 0) {
            String key = all.get() == 0 ? "stations.none" : "stations.none_found";
            Canvas room = canvas.part(1, 2, canvas.rows() - 2, canvas.columns() - 4);
            Paragraph.draw(room, List.of(Paragraph.of(around.say(key))), 0, around);
            return;
        }
        int height = listHeight(canvas.rows(), around);
        StationColumns columns = StationColumns.of(width - 3, around);
        columns.heading(left.part(0, 2, 1, width - 3));
        Lists.draw(
                left.part(1, 0, height, width),
                rows.state(),
                rows.size(),
                true,
                around,
                (line, index, style) -> rows.row(index)
                        .ifPresentOrElse(
                                row -> columns.row(line, row, style),
                                () -> line.put(0, 0, around.say("loading"), style)));
        Canvas about = around.wide()
                ? canvas.part(0, width + 1, canvas.rows(), canvas.columns() - width - 1)
                : canvas.part(1 + height, 1, ABOUT_ROWS, width - 2);
        rows.chosen().ifPresent(row -> Paragraph.draw(about, AboutListed.station(row, around), 0, around));
    }
}
