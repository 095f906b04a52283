package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.amend.ChangeWords;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.table.TablePlan;
import thalweg.exchange.table.TableReport;
import thalweg.text.Clean;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * What a file of records would change, to take in or to leave. It is taken in whole or not at all, after a copy of the
 * database as it is.
 *
 * @param go the file and its plan
 * @param top first line shown
 * @param working whether it is being taken in
 */
record TakeInScreen(Go.TakeIn go, int top, boolean working) implements Screen {

    private static final int LONGEST_VALUE = 200;

    /** Rows that are told one by one; the others are counted. */
    private static final int MOST_ROWS = 500;

    static TakeInScreen of(Go.TakeIn go) {
        return new TakeInScreen(go, 0, false);
    }

    @Override
    public String title(Surroundings around) {
        return around.say("take_in.title", go.file());
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        int page = Math.max(1, around.rows() - 3);
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.ctrl('s'), around.say("key.take_in"), this::take)
                .or(Key.of(Key.Named.F2))
                .unless(go.plan().isEmpty(), around.say("take_in.nothing"))
                .unless(refused(), around.say("table.refused"))
                .unless(working, around.say("take_in.working"))
                .unless(around.readOnly(), around.say("read_only.refused")));
        if (working) {
            bindings.add(Binding.of(
                    Key.Named.ESCAPE,
                    around.say("key.stop"),
                    () -> Step.stay(this).doing(new Effect.Stop())));
            bindings.add(Binding.of(Key.Named.ENTER, around.say("key.meanwhile"), () -> Step.back(this)));
        } else {
            bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        }
        bindings.add(Binding.of(Key.Named.DOWN, around.say("key.down"), () -> scrolled(1, around))
                .or(Key.of('j'))
                .quiet());
        bindings.add(Binding.of(Key.Named.UP, around.say("key.up"), () -> scrolled(-1, around))
                .or(Key.of('k'))
                .quiet());
        bindings.add(Binding.of(Key.Named.PAGE_DOWN, around.say("key.page_down"), () -> scrolled(page, around))
                .or(Key.of(' ')));
        bindings.add(Binding.of(Key.Named.PAGE_UP, around.say("key.page_up"), () -> scrolled(-page, around)));
        return bindings;
    }

    private boolean refused() {
        return go.table().filter(table -> table.plan().isRefused()).isPresent();
    }

    private Step take() {
        return Step.stay(new TakeInScreen(go, top, true)).doing(new Ask.TakeIn(go.plan()));
    }

    private Step scrolled(int by, Surroundings around) {
        int to = Paragraph.scrolled(text(around), top, by, around.rows() - 2, around.columns() - 2);
        return Step.stay(new TakeInScreen(go, to, working));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Told.TakenIn taken) {
            return Step.back(new TakeInScreen(go, top, false)).saying(around.say("take_in.done", taken.backup()));
        }
        if (message instanceof Message.Progressed progressed) {
            return Step.stay(this).sayingMeanwhile(LongWork.line(progressed, around));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(new TakeInScreen(go, top, false)).refusing(failed.sentence());
        }
        return message instanceof Message.Wheel wheel ? scrolled(wheel.rows(), around) : Step.stay(this);
    }

    private List<Paragraph> text(Surroundings around) {
        ImportPlan plan = go.plan();
        List<Paragraph> text = new ArrayList<>();
        go.table().ifPresent(table -> table(table, text, around));
        if (refused()) {
            return text;
        }
        text.add(Paragraph.of(around.phrases().count("take_in.canyons", plan.canyons()), Style.STRONG));
        int changed = plan.revisions().size() - plan.added();
        text.add(Paragraph.of(around.phrases().count("take_in.added", plan.added())));
        text.add(Paragraph.of(
                around.phrases().count("take_in.entries", plan.facts().size())));
        text.add(Paragraph.of(around.phrases().count("take_in.changed", changed)));
        text.add(Paragraph.of(around.phrases().count("take_in.unchanged", plan.unchanged())));
        if (plan.isEmpty()) {
            text.add(Paragraph.gap());
            text.add(Paragraph.of(around.say("take_in.nothing"), Style.STRONG));
        }
        plan.remarks().forEach(remark -> text.add(Paragraph.of(around.phrases().say(remark), Style.CAUTION)));
        if (!plan.changes().isEmpty()) {
            text.add(Paragraph.gap());
            ChangeWords words = new ChangeWords(around.phrases(), around.units());
            plan.changes()
                    .forEach(change -> text.add(new Paragraph(
                            2,
                            around.say(
                                    "take_in.change",
                                    change.thing(),
                                    words.fieldName(change.field()),
                                    shown(change.before(), around),
                                    shown(change.after(), around)),
                            Style.NORMAL)));
        }
        return text;
    }

    /** What a table says, row by row, before what that comes to. */
    private static void table(Told.TableUnderstood table, List<Paragraph> text, Surroundings around) {
        TableReport report = new TableReport(around.phrases(), around.units());
        TablePlan plan = table.plan();
        text.add(Paragraph.of(report.count(plan), plan.isRefused() ? Style.ERROR : Style.STRONG));
        if (plan.isRefused()) {
            text.add(Paragraph.of(around.say("table.refused"), Style.ERROR));
        }
        if (!plan.leftOut().isEmpty()) {
            text.add(Paragraph.of(around.say("table.left_out", String.join(", ", plan.leftOut())), Style.CAUTION));
        }
        section(around.say("table.first"), report.first(table.first()), text);
        section(around.say("table.rows"), report.rows(plan, MOST_ROWS), text);
        text.add(Paragraph.gap());
    }

    private static void section(String head, List<String> lines, List<Paragraph> text) {
        if (!lines.isEmpty()) {
            text.add(Paragraph.gap());
            text.add(Paragraph.of(head, Style.STRONG));
            lines.forEach(line -> text.add(new Paragraph(2, line, Style.NORMAL)));
        }
    }

    private static String shown(String value, Surroundings around) {
        return value.isEmpty() ? around.say("draft.nothing") : Clean.line(value, LONGEST_VALUE);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        Paragraph.draw(canvas.part(0, 1, canvas.rows(), canvas.columns() - 2), text(around), top, around);
    }
}
