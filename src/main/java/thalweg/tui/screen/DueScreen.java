package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.due.DueCount;
import thalweg.due.DuePart;
import thalweg.due.DueTask;
import thalweg.due.DueWords;
import thalweg.logbook.CanyonName;
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
 * What is due, the most urgent first, with the reasons for the chosen part.
 *
 * @param go of which canyon, if not of all
 * @param days from today within which it is due
 * @param found what the last search found; empty until it has
 * @param list which row is chosen
 * @param search the words
 * @param most how many are listed; more are asked for where somebody comes to their end
 * @param count how many there are where they are more than are listed; empty until they are counted
 */
record DueScreen(
        Go.DueParts go,
        int days,
        Optional<Told.DueFound> found,
        ListState list,
        Searching search,
        int most,
        Optional<DueCount> count)
        implements Screen {

    /** More than a screen has rows, and few enough to be there at once. */
    private static final int FIRST = 100;

    /** How far one looks ahead, one after the other [days]. */
    private static final List<Integer> AHEAD = List.of(0, 31, 92, 366);

    private static final int ABOUT_ROWS = 4;
    private static final int WIDTH_IN_HUNDREDTHS = 60;

    static DueScreen opened(Go.DueParts go) {
        return new DueScreen(
                go, AHEAD.get(0), Optional.empty(), ListState.START, Searching.NONE, FIRST, Optional.empty());
    }

    /** Those that are due, then those of which nobody can tell. */
    private List<DuePart> rows() {
        List<DuePart> rows = new ArrayList<>();
        found.ifPresent(told -> {
            rows.addAll(told.found().parts());
            rows.addAll(told.found().unknownAge());
        });
        return rows;
    }

    private Optional<DuePart> chosen() {
        List<DuePart> rows = rows();
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        String where = go.canyon().map(CanyonName::name).orElse(around.say("due.everywhere"));
        return around.say("due.title", where, ahead(days, around))
                + counted().map(all -> "  " + all.due()).orElse("");
    }

    private Optional<DueCount> counted() {
        return found.flatMap(told -> told.found().count()).or(() -> count);
    }

    private static String ahead(int days, Surroundings around) {
        return days == 0
                ? around.say("due.now")
                : around.say("due.within", around.phrases().count("due.days", days));
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
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open_station"), this::open)
                .unless(rows().isEmpty(), around.say("parts.nothing_to_open")));
        bindings.add(
                search.words().isEmpty()
                        ? Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this))
                        : Binding.of(
                                Key.Named.ESCAPE,
                                around.say("key.clear_search"),
                                () -> searched(Searching.NONE, around)));
        List<Binding> moves = Lists.bindings(list, rows().size(), page(around), around, to -> moved(to, around));
        if (search.open()) {
            bindings.add(
                    Binding.of(Key.Named.TAB, around.say("key.search_done"), () -> Step.stay(with(search.closed()))));
            moves.stream().filter(binding -> !binding.keys().get(0).writes()).forEach(bindings::add);
            return bindings;
        }
        int next = AHEAD.get((AHEAD.indexOf(days) + 1) % AHEAD.size());
        bindings.add(Binding.of(Key.of('d'), ahead(next, around), () -> lookedAhead(next, around)));
        bindings.add(Binding.of(Key.of('/'), around.say("key.search"), () -> Step.stay(with(search.opened()))));
        bindings.add(Binding.of(
                        Key.of('w'), around.say("key.write_list"), () -> Step.open(this, new Go.WriteDue(find(around))))
                .unless(rows().isEmpty(), around.say("parts.nothing_to_write")));
        bindings.add(Binding.of(
                        Key.Named.F5,
                        around.say("key.reload"),
                        () -> Step.stay(this).doing(find(around)))
                .quiet());
        bindings.addAll(moves);
        return bindings;
    }

    private Ask.FindDue find(Surroundings around) {
        return new Ask.FindDue(search.words(), go.canyon().map(CanyonName::uid), days, around.settings(), most);
    }

    private Step open() {
        PartRow row = chosen().orElseThrow().row();
        return Step.open(with(search.closed()), new Go.OneStation(row.canyon(), row.station()));
    }

    private Step lookedAhead(int other, Surroundings around) {
        DueScreen next = new DueScreen(go, other, found, ListState.START, search, FIRST, Optional.empty());
        return Step.stay(next).doing(next.find(around));
    }

    private Step searched(Searching words, Surroundings around) {
        DueScreen next = new DueScreen(go, days, found, ListState.START, words, FIRST, Optional.empty());
        return Step.stay(next).doing(next.find(around));
    }

    /** Whoever comes near the end of what is listed gets more of it. */
    private Step moved(ListState to, Surroundings around) {
        DueScreen now = new DueScreen(go, days, found, to, search, most, count);
        boolean near = to.chosen() >= rows().size() - 2 * page(around);
        boolean more = found.filter(told -> told.asked().equals(find(around)))
                .filter(told -> told.found().count().map(DueCount::all).orElse(Integer.MAX_VALUE)
                        > told.found().listed())
                .isPresent();
        if (!near || !more) {
            return Step.stay(now);
        }
        DueScreen next = new DueScreen(go, days, found, to, search, 2 * most, count);
        return Step.stay(next).doing(next.find(around));
    }

    private DueScreen with(Searching words) {
        return new DueScreen(go, days, found, list, words, most, count);
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            DueScreen now = new DueScreen(go, days, found, list, search, most, Optional.empty());
            return Step.stay(now).doing(find(around));
        }
        if (message instanceof Told.DueFound told) {
            return told.asked().equals(find(around)) ? found(told) : Step.stay(this);
        }
        if (message instanceof Told.DueCounted told) {
            return Step.stay(told.asked().equals(find(around).first()) ? with(told.count()) : this);
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
            return moved(list.moved(wheel.rows(), rows().size()), around);
        }
        if (message instanceof Message.MousePressed mouse) {
            return pressed(mouse, around);
        }
        return Step.stay(this);
    }

    private Step found(Told.DueFound told) {
        ListState at = list.at(list.chosen(), told.found().listed());
        DueScreen now = new DueScreen(go, days, Optional.of(told), at, search, most, count);
        boolean toCount = told.found().count().isEmpty() && count.isEmpty();
        return toCount ? Step.stay(now).doing(new Ask.CountDue(told.asked().first())) : Step.stay(now);
    }

    private DueScreen with(DueCount counted) {
        return new DueScreen(go, days, found, list, search, most, Optional.of(counted));
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int height = listHeight(around.rows() - 2, around);
        int row = list.shownIn(height, rows().size()).top() + mouse.row() - 1;
        if (mouse.row() < 1 || mouse.row() > height || row >= rows().size()) {
            return Step.stay(this);
        }
        return row == list.chosen() ? open() : moved(list.at(row, rows().size()), around);
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
        search.draw(left, left.rows() - 1, around);
        if (found.isEmpty()) {
            left.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        int more =
                counted().map(all -> all.all() - found.get().found().listed()).orElse(0);
        if (more > 0 && !search.open() && search.words().isEmpty()) {
            left.fit(left.rows() - 1, 0, width - 1, around.phrases().count("due.left", more), Style.FAINT);
        }
        if (rows().isEmpty()) {
            Canvas room = canvas.part(1, 2, canvas.rows() - 2, canvas.columns() - 4);
            Paragraph.draw(room, nothing(around), 0, around);
            return;
        }
        int height = listHeight(canvas.rows(), around);
        DueColumns columns = DueColumns.of(width - 3, go.canyon().isEmpty(), around);
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
        chosen().ifPresent(part -> about(about, part, around));
    }

    private List<Paragraph> nothing(Surroundings around) {
        if (!found.orElseThrow().found().fits()) {
            return List.of(Paragraph.of(around.say(search.words().isEmpty() ? "parts.none" : "parts.none_found")));
        }
        String none = days == 0
                ? around.say("due.none")
                : around.say("due.none_within", around.phrases().count("due.days", days));
        return List.of(Paragraph.of(none), Paragraph.gap(), Paragraph.of(around.caution("due.note"), Style.CAUTION));
    }

    private static void about(Canvas canvas, DuePart part, Surroundings around) {
        if (!around.wide()) {
            Paragraph.draw(canvas, reasons(part, around), 0, around);
            return;
        }
        List<Paragraph> text = new ArrayList<>(AboutPart.whole(part.row(), around));
        text.add(Paragraph.gap());
        text.addAll(reasons(part, around));
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.caution("due.note"), Style.CAUTION));
        Paragraph.draw(canvas, text, 0, around);
    }

    private static List<Paragraph> reasons(DuePart part, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        part.dues().forEach(due -> {
            text.add(Paragraph.of(
                    DueWords.what(due, around.today(), around.phrases()),
                    due.task() == DueTask.MEND ? Style.BAD : Style.MIND));
            text.add(Paragraph.of(DueWords.why(due, around.phrases())));
        });
        return text;
    }
}
