package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.amend.ChangeView;
import thalweg.amend.ChangeWords;
import thalweg.amend.Deed;
import thalweg.amend.Moment;
import thalweg.text.Width;
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
 * What was changed, newest first: who, when, what in words, and whether it was taken back since.
 *
 * @param go of which canyon, or of all
 * @param changes once they are listed
 * @param list which row is chosen
 */
record ChangesScreen(Go.Changes go, Optional<List<ChangeView>> changes, ListState list) implements Screen {

    /** More deeds than these are counted, not told. */
    private static final int MOST_DEEDS = 200;

    private static final int MARGIN = 2;

    /** Not listed yet. */
    static ChangesScreen opened(Go.Changes go) {
        return new ChangesScreen(go, Optional.empty(), ListState.START);
    }

    private List<ChangeView> rows() {
        return changes.orElse(List.of());
    }

    private Optional<ChangeView> chosen() {
        List<ChangeView> rows = rows();
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    private static ChangeWords words(Surroundings around) {
        return new ChangeWords(around.phrases(), around.units());
    }

    @Override
    public String title(Surroundings around) {
        return go.canyon().isPresent() ? around.say("changes.of", go.canyonName()) : around.say("changes.title");
    }

    @Override
    public boolean waiting() {
        return changes.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String readOnly = around.say("read_only.refused");
        boolean none = chosen().isEmpty();
        boolean taken = chosen().flatMap(ChangeView::taken).isPresent();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.read"), this::load)
                .unless(none, around.say("changes.none")));
        bindings.add(Binding.of(Key.of('t'), around.say(taken ? "key.bring_again" : "key.take_back"), () -> turn(taken))
                .unless(none, around.say("changes.none"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.addAll(Lists.bindings(list, rows().size(), around.rows() / 2, around, to -> Step.stay(at(to))));
        return bindings;
    }

    private ChangesScreen at(ListState to) {
        return new ChangesScreen(go, changes, to);
    }

    private Step load() {
        return Step.stay(this).doing(new Amend.LoadChange(chosen().orElseThrow().key()));
    }

    private Step turn(boolean taken) {
        long key = chosen().orElseThrow().key();
        return Step.stay(this).doing(taken ? new Amend.BringAgain(key) : new Amend.TakeBack(key));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        Step reload = Step.stay(this).doing(new Amend.ListChanges(go.canyon()));
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return reload;
        }
        if (message instanceof Told.Turned turned) {
            return reload.saying(Amending.said(turned, go.canyon(), around));
        }
        if (message instanceof Told.ChangesListed listed) {
            int size = listed.changes().size();
            return Step.stay(new ChangesScreen(go, Optional.of(listed.changes()), list.at(list.chosen(), size)));
        }
        if (message instanceof Told.ChangeLoaded whole) {
            return Step.open(this, new Go.Read(title(around), detail(whole.change(), around)));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return Step.stay(at(list.moved(wheel.rows(), rows().size())));
        }
        if (message instanceof Message.MousePressed mouse) {
            int size = rows().size();
            return ListDetail.pressed(mouse, list, size, around)
                    .map(row -> row == list.chosen() ? load() : Step.stay(at(list.at(row, size))))
                    .orElse(Step.stay(this));
        }
        return Step.stay(this);
    }

    private List<Paragraph> detail(ChangeView change, Surroundings around) {
        ChangeWords words = words(around);
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(
                around.say("changes.who", change.key(), change.author(), Moment.print(around.phrases(), change.at())),
                Style.STRONG));
        if (!change.canyonName().isEmpty() && go.canyon().isEmpty()) {
            text.add(Paragraph.of(change.canyonName()));
        }
        change.taken()
                .ifPresent(signed -> text.add(Paragraph.of(
                        around.say("changes.taken_by", signed.author(), Moment.print(around.phrases(), signed.at())),
                        Style.MIND)));
        text.add(Paragraph.gap());
        List<Deed> told = change.deeds().stream().limit(MOST_DEEDS).toList();
        if (told.size() < change.size()) {
            text.add(Paragraph.of(words.line(change)));
        }
        for (Deed deed : told) {
            text.add(Paragraph.of(words.line(deed)));
            words.details(deed).forEach(line -> text.add(new Paragraph(MARGIN, line, Style.NORMAL)));
        }
        int more = change.size() - told.size();
        if (more > 0) {
            text.add(Paragraph.of(around.say("changes.more", more), Style.FAINT));
        }
        return text;
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (rows().isEmpty()) {
            Paragraph text = changes.isPresent()
                    ? Paragraph.of(around.say("changes.empty"))
                    : Paragraph.of(around.say("loading"), Style.FAINT);
            Paragraph.draw(canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4), List.of(text), 0, around);
            return;
        }
        List<Paragraph> detail = chosen().map(change -> detail(change, around)).orElse(List.of());
        ListDetail.draw(
                canvas,
                list,
                rows().size(),
                detail,
                around,
                (line, index, style) -> paint(line, rows().get(index), style, around));
    }

    private void paint(Canvas line, ChangeView change, Style style, Surroundings around) {
        boolean taken = change.taken().isPresent();
        Style faint = taken && style != Style.SELECTED ? Style.FAINT : style;
        String mark = taken ? around.say("changes.mark") : "";
        String when = change.at().substring(0, Math.min(change.at().length(), "2026-11-25".length()));
        String where = go.canyon().isPresent() || change.canyonName().isEmpty()
                ? ""
                : around.labelled(change.canyonName(), "");
        String text =
                when + "  " + change.author() + "  " + where + words(around).line(change);
        int room = Math.max(4, line.columns() - (taken ? Width.of(mark) + 2 : 0));
        line.fit(0, 0, room, text, faint);
        if (taken) {
            line.put(0, line.columns() - Width.of(mark), mark, faint);
        }
    }
}
