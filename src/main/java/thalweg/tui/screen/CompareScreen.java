package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.rig.RigComparison;
import thalweg.rig.RigInput;
import thalweg.rig.RigPriority;
import thalweg.sheet.ComparisonWords;
import thalweg.text.Width;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * The points of a rig in every layout, side by side.
 *
 * @param input whose points they are
 * @param stated whether somebody said what load and material there are
 * @param priority what matters most
 * @param comparison empty until it is worked out
 * @param top first line shown
 */
record CompareScreen(RigInput input, boolean stated, RigPriority priority, Optional<RigComparison> comparison, int top)
        implements Screen {

    /** Not worked out yet. */
    static CompareScreen of(Go.Compare go) {
        return new CompareScreen(go.input(), go.stated(), RigPriority.UNSTATED, Optional.empty(), 0);
    }

    @Override
    public String title(Surroundings around) {
        return input.name().isBlank()
                ? around.say("compare.title")
                : around.labelled(around.say("compare.title"), input.name());
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        int page = Math.max(1, around.rows() - 3);
        return List.of(
                Binding.of(Key.of('m'), around.say("key.what_matters"), this::nextPriority),
                Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)),
                Binding.of(Key.Named.PAGE_DOWN, around.say("key.page_down"), () -> scrolled(page, around))
                        .or(Key.of(' ')),
                Binding.of(Key.Named.PAGE_UP, around.say("key.page_up"), () -> scrolled(-page, around))
                        .quiet(),
                Binding.of(Key.Named.DOWN, around.say("key.down"), () -> scrolled(1, around))
                        .or(Key.of('j'))
                        .quiet(),
                Binding.of(Key.Named.UP, around.say("key.up"), () -> scrolled(-1, around))
                        .or(Key.of('k'))
                        .quiet());
    }

    private Step nextPriority() {
        RigPriority next = priority.next();
        return Step.stay(new CompareScreen(input, stated, next, comparison, 0)).doing(new Ask.Compare(input, next));
    }

    private Step scrolled(int by, Surroundings around) {
        int to = Paragraph.scrolled(text(around), top, by, around.rows() - 2, around.columns() - 2);
        return Step.stay(new CompareScreen(input, stated, priority, comparison, to));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            return Step.stay(this).doing(new Ask.Compare(input, priority));
        }
        if (message instanceof Told.Compared told && told.comparison().priority() == priority) {
            return Step.stay(new CompareScreen(input, stated, priority, Optional.of(told.comparison()), 0));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        return message instanceof Message.Wheel wheel ? scrolled(wheel.rows(), around) : Step.stay(this);
    }

    private List<Paragraph> text(Surroundings around) {
        if (comparison.isEmpty()) {
            return List.of(Paragraph.of(around.say("compare.working"), Style.FAINT));
        }
        RigComparison known = comparison.get();
        ComparisonWords words = new ComparisonWords(around.phrases(), around.units());
        List<Paragraph> text = new ArrayList<>();
        if (!stated) {
            text.add(Paragraph.of(around.say("compare.start_values"), Style.CAUTION));
        }
        text.add(Paragraph.of(words.says(known), Style.STRONG));
        text.add(Paragraph.of(words.priority(known)));
        text.add(Paragraph.gap());
        text.addAll(table(words.table(known), around.columns() - 2, around));
        text.add(Paragraph.of(around.say("compare.legend"), Style.FAINT));
        text.add(Paragraph.gap());
        known.questions().forEach(question -> text.add(Paragraph.of(words.question(question))));
        text.add(Paragraph.gap());
        listed(text, words.restsOn(), words.grounds(known));
        listed(text, words.wouldChange(), words.otherwise(known));
        text.add(Paragraph.of(words.caution(), Style.CAUTION));
        return text;
    }

    private static void listed(List<Paragraph> text, String heading, List<String> items) {
        if (!items.isEmpty()) {
            text.add(Paragraph.of(heading, Style.STRONG));
            items.forEach(item -> text.add(new Paragraph(2, item, Style.NORMAL)));
        }
    }

    /** Lines of columns where they fit; else a paragraph a layout, each cell with its heading. */
    private static List<Paragraph> table(List<List<String>> rows, int columns, Surroundings around) {
        int cells = rows.get(0).size();
        int[] widths = new int[cells];
        rows.forEach(row -> {
            for (int i = 0; i < cells; i++) {
                widths[i] = Math.max(widths[i], Width.of(row.get(i)));
            }
        });
        int whole = 2 * (cells - 1);
        for (int width : widths) {
            whole += width;
        }
        return whole <= columns ? lines(rows, widths) : told(rows, around);
    }

    private static List<Paragraph> lines(List<List<String>> rows, int[] widths) {
        List<Paragraph> text = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                line.append(Width.pad(row.get(i), widths[i])).append("  ");
            }
            text.add(Paragraph.of(line.toString().stripTrailing(), text.isEmpty() ? Style.FAINT : Style.NORMAL));
        }
        return text;
    }

    private static List<Paragraph> told(List<List<String>> rows, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        List<String> heading = rows.get(0);
        for (List<String> row : rows.subList(1, rows.size())) {
            List<String> cells = new ArrayList<>();
            for (int i = 1; i < row.size(); i++) {
                cells.add(heading.get(i) + " " + row.get(i));
            }
            text.add(Paragraph.of(around.labelled(row.get(0), String.join(", ", cells))));
        }
        return text;
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        Paragraph.draw(canvas.part(0, 1, canvas.rows(), canvas.columns() - 2), text(around), top, around);
    }
}
