package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.PartRow;
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
 * Parts of all canyons that words find, as a recall asks for, with everything about the chosen one.
 *
 * @param found what the last search found; empty until it has
 * @param list which row is chosen
 * @param search the words
 */
record PartsScreen(Optional<Told.PartsFound> found, ListState list, Searching search) implements Screen {

    /** Rows under the list for what is known of the chosen part, where there is no room beside it. */
    private static final int ABOUT_ROWS = 3;

    /** Nothing found yet; what is typed are words at once. */
    static PartsScreen opened() {
        return new PartsScreen(Optional.empty(), ListState.START, Searching.NONE.opened());
    }

    private List<PartRow> rows() {
        return found.map(answer -> answer.found().rows()).orElse(List.of());
    }

    private Optional<PartRow> chosen() {
        List<PartRow> rows = rows();
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    private boolean more() {
        return found.map(answer -> answer.found().more()).orElse(false);
    }

    @Override
    public String title(Surroundings around) {
        String count = found.isEmpty() ? "" : "  " + rows().size();
        return around.say("parts.title") + (more() ? "  " + around.say("parts.first", rows().size()) : count);
    }

    @Override
    public boolean writing() {
        return search.open();
    }

    @Override
    public boolean waiting() {
        return found.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        if (search.open()) {
            String done = around.say(rows().isEmpty() ? "key.search_done" : "key.search_done_write");
            bindings.add(Binding.of(Key.Named.TAB, done, () -> Step.stay(with(search.closed()))));
        }
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open_station"), this::open)
                .unless(rows().isEmpty(), around.say("parts.nothing_to_open")));
        bindings.add(
                search.words().isEmpty()
                        ? Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this))
                        : Binding.of(Key.Named.ESCAPE, around.say("key.clear_search"), this::cleared));
        List<Binding> moves = Lists.bindings(list, rows().size(), page(around), around, this::moved);
        if (search.open()) {
            moves.stream().filter(binding -> !binding.keys().get(0).writes()).forEach(bindings::add);
            return bindings;
        }
        bindings.add(Binding.of(Key.of('/'), around.say("key.search"), () -> Step.stay(with(search.opened()))));
        bindings.add(Binding.of(
                        Key.of('w'),
                        around.say("key.write_list"),
                        () -> Step.open(
                                this, new Go.WriteParts(found.orElseThrow().words())))
                .unless(rows().isEmpty(), around.say("parts.nothing_to_write")));
        bindings.add(Binding.of(
                        Key.Named.F5,
                        around.say("key.reload"),
                        () -> Step.stay(this).doing(find()))
                .quiet());
        bindings.addAll(moves);
        return bindings;
    }

    private Ask find() {
        return new Ask.FindParts(search.words());
    }

    private Step open() {
        PartRow row = chosen().orElseThrow();
        return Step.open(with(search.closed()), new Go.OneStation(row.canyon(), row.station()));
    }

    private Step cleared() {
        return searched(Searching.NONE.opened());
    }

    private Step searched(Searching words) {
        PartsScreen next = new PartsScreen(found, ListState.START, words);
        return Step.stay(next).doing(next.find());
    }

    private Step moved(ListState to) {
        return Step.stay(new PartsScreen(found, to, search));
    }

    private PartsScreen with(Searching words) {
        return new PartsScreen(found, list, words);
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(find());
        }
        if (message instanceof Told.PartsFound answer) {
            return Step.stay(answer.words().equals(search.words()) ? with(answer) : this);
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

    private PartsScreen with(Told.PartsFound answer) {
        return new PartsScreen(
                Optional.of(answer),
                list.at(list.chosen(), answer.found().rows().size()),
                search);
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int height = listHeight(around.rows() - 2, around);
        int row = list.shownIn(height, rows().size()).top() + mouse.row() - 1;
        if (mouse.row() < 1 || mouse.row() > height || row >= rows().size()) {
            return Step.stay(this);
        }
        return row == list.chosen() ? open() : moved(list.at(row, rows().size()));
    }

    /** Between the heading and what stands below: about the chosen part in narrow terminals, and the words. */
    private static int listHeight(int bodyRows, Surroundings around) {
        return bodyRows - 2 - (around.wide() ? 0 : ABOUT_ROWS);
    }

    private static int page(Surroundings around) {
        return Math.max(1, listHeight(around.rows() - 2, around));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        int width = around.wide() ? canvas.columns() * 65 / 100 : canvas.columns();
        Canvas left = canvas.part(0, 0, canvas.rows(), width);
        search.draw(left, left.rows() - 1, around);
        if (found.isEmpty()) {
            left.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        if (rows().isEmpty()) {
            String key = search.words().isEmpty() ? "parts.none" : "parts.none_found";
            Canvas room = canvas.part(1, 2, canvas.rows() - 2, canvas.columns() - 4);
            Paragraph.draw(room, List.of(Paragraph.of(around.say(key))), 0, around);
            return;
        }
        int height = listHeight(canvas.rows(), around);
        PartColumns columns = PartColumns.of(width - 3, around);
        columns.heading(left.part(0, 2, 1, width - 3));
        Lists.draw(
                left.part(1, 0, height, width),
                list,
                rows().size(),
                true,
                around,
                (line, index, style) -> columns.row(line, rows().get(index), style));
        Canvas about = around.wide()
                ? canvas.part(0, width + 1, canvas.rows(), canvas.columns() - width - 1)
                : canvas.part(1 + height, 1, ABOUT_ROWS, width - 2);
        chosen().ifPresent(row -> about(about, row, around));
    }

    private void about(Canvas canvas, PartRow row, Surroundings around) {
        if (!around.wide()) {
            AboutPart.drawBrief(canvas, row, around);
            return;
        }
        List<Paragraph> text = AboutPart.whole(row, around);
        if (more()) {
            text.add(Paragraph.gap());
            text.add(Paragraph.of(around.say("parts.more", rows().size()), Style.CAUTION));
        }
        Paragraph.draw(canvas, text, 0, around);
    }
}
