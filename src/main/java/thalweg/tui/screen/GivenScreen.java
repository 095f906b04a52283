package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.SheetGiven;
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
 * The sheets of one canyon or of all that were given out; the chosen one beside the list where there is room.
 *
 * @param go whose sheets
 * @param loaded the sheets, once they are loaded
 * @param list which row is chosen
 */
record GivenScreen(Go.Given go, Optional<Told.GivenLoaded> loaded, ListState list) implements Screen {

    private static final int NUMBER = 6;
    private static final int DAY = 10;
    private static final int STATE = 9;

    /** Not loaded yet. */
    static GivenScreen opened(Go.Given go) {
        return new GivenScreen(go, Optional.empty(), ListState.START);
    }

    private List<GivenSheet> sheets() {
        return loaded.map(Told.GivenLoaded::sheets).orElse(List.of());
    }

    private Optional<GivenSheet> chosen() {
        List<GivenSheet> sheets = sheets();
        return sheets.isEmpty()
                ? Optional.empty()
                : Optional.of(sheets.get(Math.min(list.chosen(), sheets.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        String title = go.canyon()
                .map(canyon -> around.say("given.title_of", AboutLocal.name(canyon, around)))
                .orElse(around.say("given.title"));
        return loaded.isEmpty() ? title : title + "  " + sheets().size();
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.read"), () -> read(around))
                .unless(chosen().isEmpty(), around.say("given.nothing")));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.addAll(Lists.bindings(list, sheets().size(), around.rows() - 3, around, this::moved));
        return bindings;
    }

    private Step moved(ListState to) {
        return Step.stay(new GivenScreen(go, loaded, to));
    }

    private Step read(Surroundings around) {
        return Step.open(this, new Go.Read(title(around), AboutLocal.sheet(chosen().orElseThrow(), around)));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(new Ask.LoadGiven(go.canyon().map(canyon -> canyon.uid())));
        }
        if (message instanceof Told.GivenLoaded told) {
            return Step.stay(new GivenScreen(go, Optional.of(told), list));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), sheets().size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            int row = list.shownIn(around.rows() - 3, sheets().size()).top() + mouse.row() - 1;
            boolean onRow = mouse.row() >= 1 && row < sheets().size();
            return !onRow
                    ? Step.stay(this)
                    : row == list.chosen() ? read(around) : moved(list.at(row, sheets().size()));
        }
        return Step.stay(this);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty()) {
            canvas.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        List<GivenSheet> sheets = sheets();
        if (sheets.isEmpty()) {
            Canvas middle = canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4);
            List<Paragraph> text = List.of(
                    Paragraph.of(around.say(go.canyon().isEmpty() ? "given.empty" : "given.empty_of")),
                    Paragraph.gap(),
                    Paragraph.of(around.say("given.private"), Style.FAINT));
            Paragraph.draw(middle, text, 0, around);
            return;
        }
        int width = around.wide() ? canvas.columns() / 2 : canvas.columns();
        Canvas body = canvas.part(1, 0, canvas.rows() - 1, width);
        boolean bar = sheets.size() > body.rows();
        row(
                canvas.part(0, 2, 1, width - 2 - (bar ? 1 : 0)),
                around.say("given.head.number"),
                around.say("given.head.day"),
                around.say("given.head.state"),
                around.say("given.head.to"),
                Style.FAINT,
                Style.FAINT);
        Lists.draw(
                body,
                list,
                sheets.size(),
                true,
                around,
                (line, index, style) -> row(line, sheets.get(index), style, around));
        if (around.wide()) {
            Canvas right = canvas.part(0, width + 1, canvas.rows(), canvas.columns() - width - 2);
            chosen().ifPresent(sheet -> Paragraph.draw(right, AboutLocal.sheet(sheet, around), 0, around));
        }
    }

    private void row(Canvas line, GivenSheet shown, Style style, Surroundings around) {
        SheetGiven given = shown.entry().content();
        boolean withdrawn = !shown.entry().counts();
        String state = around.say(
                withdrawn ? "given.row.withdrawn" : shown.changedSince() ? "given.row.changed" : "given.row.unchanged");
        Style stateStyle = style == Style.SELECTED ? style : shown.changedSince() || withdrawn ? Style.MIND : style;
        String to = go.canyon().isPresent() ? given.to() : given.to() + ", " + AboutLocal.name(shown.canyon(), around);
        row(line, Long.toString(given.number()), given.on().print(), state, to, style, stateStyle);
    }

    private static void row(
            Canvas line, String number, String day, String state, String to, Style style, Style stateStyle) {
        line.fit(0, 0, NUMBER, number, style);
        line.fit(0, NUMBER + 1, DAY, day, style);
        line.fit(0, NUMBER + DAY + 2, STATE, state, stateStyle);
        int at = NUMBER + DAY + STATE + 3;
        line.fit(0, at, Math.max(8, line.columns() - at), to, style);
    }
}
