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

    /** Below that the letters of the table stand alone and are explained below it [columns]. */
    private static final int LEAST_FOR_WORDS = 60;

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
        List<List<String>> layouts = words.table(known);
        List<String> labels = around.columns() < LEAST_FOR_WORDS ? layouts.get(0) : words.labels(known);
        text.addAll(table(layouts, labels, around.columns() - 4));
        if (around.columns() < LEAST_FOR_WORDS) {
            text.add(Paragraph.of(words.letters(known), Style.FAINT));
        }
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

    /** A line a letter and a column a layout; columns that do not fit stand in another table below. */
    private static List<Paragraph> table(List<List<String>> layouts, List<String> labels, int columns) {
        int label = labels.stream().mapToInt(Width::of).max().orElse(0);
        List<Paragraph> text = new ArrayList<>();
        int from = 1;
        while (from < layouts.size()) {
            int to = from + 1;
            int wide = label + 2 + width(layouts.get(from));
            while (to < layouts.size() && wide + 2 + width(layouts.get(to)) <= columns) {
                wide += 2 + width(layouts.get(to++));
            }
            if (from > 1) {
                text.add(Paragraph.gap());
            }
            text.addAll(lines(layouts.subList(from, to), labels, label));
            from = to;
        }
        return text;
    }

    private static int width(List<String> column) {
        return column.stream().mapToInt(Width::of).max().orElse(0);
    }

    private static List<Paragraph> lines(List<List<String>> layouts, List<String> labels, int label) {
        List<Paragraph> text = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            StringBuilder line = new StringBuilder(Width.pad(labels.get(i), label));
            for (List<String> layout : layouts) {
                line.append("  ").append(Width.pad(layout.get(i), width(layout)));
            }
            text.add(Paragraph.of(line.toString().stripTrailing(), i == 0 ? Style.FAINT : Style.NORMAL));
        }
        return text;
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        Paragraph.draw(canvas.part(0, 1, canvas.rows(), canvas.columns() - 2), text(around), top, around);
    }
}
