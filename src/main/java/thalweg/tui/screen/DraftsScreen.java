package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.draft.Draft;
import thalweg.draft.KeptDraft;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Effect;
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
 * The drafts that wait, each to go on with or to throw away.
 *
 * @param drafts newest first; empty until they are read
 * @param list which row is chosen
 * @param dropping whether the chosen one is about to be thrown away, if a key says so
 */
record DraftsScreen(Optional<List<KeptDraft>> drafts, ListState list, boolean dropping) implements Screen {

    /** Room for "less than a minute old" [cells]. */
    private static final int AGE = 22;

    static DraftsScreen opened() {
        return new DraftsScreen(Optional.empty(), ListState.START, false);
    }

    private List<KeptDraft> rows() {
        return drafts.orElse(List.of());
    }

    private Optional<KeptDraft> chosen() {
        return rows().isEmpty()
                ? Optional.empty()
                : Optional.of(rows().get(Math.min(list.chosen(), rows().size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        return around.say("drafts.title");
    }

    @Override
    public boolean waiting() {
        return drafts.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        if (dropping) {
            return List.of(
                    Binding.of(Key.of('d'), around.say("key.drop_listed"), this::dropped),
                    Binding.of(Key.Named.ESCAPE, around.say("key.leave_as_was"), () -> Step.stay(dropping(false))));
        }
        boolean none = rows().isEmpty();
        String nothing = around.say(drafts.isEmpty() ? "loading" : "drafts.none");
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open_draft"), this::open)
                .unless(none, nothing));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(
                        Key.of('x'),
                        around.say("key.drop_listed"),
                        () -> Step.stay(dropping(true)).refusing(around.say("drafts.sure")))
                .or(Key.of(Key.Named.DELETE))
                .unless(none, nothing));
        bindings.add(Binding.of(Key.of('y'), around.say("key.copy_draft"), () -> copied(around))
                .unless(none, nothing));
        bindings.addAll(Lists.bindings(list, rows().size(), around.rows() - 3, around, to -> Step.stay(at(to))));
        return bindings;
    }

    private DraftsScreen dropping(boolean sure) {
        return new DraftsScreen(drafts, list, sure);
    }

    private DraftsScreen at(ListState to) {
        return new DraftsScreen(drafts, to, false);
    }

    private Step open() {
        return Step.stay(this)
                .doing(new Ask.FindSurrounding(chosen().orElseThrow().draft().key()));
    }

    private Step dropped() {
        return Step.stay(dropping(false))
                .doing(new Keep.DropListed(chosen().orElseThrow().draft().key()));
    }

    private Step copied(Surroundings around) {
        Draft draft = chosen().orElseThrow().draft();
        String text = draft.changes().stream()
                .map(entry -> around.say("draft.entry", entry.label(), entry.shown()))
                .collect(Collectors.joining("\n"));
        return Step.stay(this)
                .doing(new Effect.Copy(draft.title() + "\n" + text))
                .saying(around.say("drafts.copied"));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return Step.stay(this).doing(new Keep.ListAll());
        }
        if (message instanceof Told.DraftsListed listed) {
            ListState kept = list.at(list.chosen(), listed.drafts().size());
            return Step.stay(new DraftsScreen(Optional.of(listed.drafts()), kept, false));
        }
        if (message instanceof Told.Surrounded found) {
            return opened(found, around);
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (dropping) {
            return Step.stay(dropping(false));
        }
        if (message instanceof Message.Wheel wheel) {
            return Step.stay(at(list.moved(wheel.rows(), rows().size())));
        }
        if (message instanceof Message.MousePressed mouse) {
            return ListDetail.pressed(mouse, list, rows().size(), around)
                    .map(row -> row == list.chosen() ? open() : Step.stay(at(list.at(row, rows().size()))))
                    .orElseGet(() -> Step.stay(this));
        }
        return Step.stay(this);
    }

    private Step opened(Told.Surrounded found, Surroundings around) {
        String title = chosen().map(kept -> kept.draft().title()).orElse("");
        return DraftPlace.of(found, title)
                .map(go -> Step.open(this, go))
                .orElseGet(() -> Step.stay(this).refusing(around.say("drafts.gone")));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (drafts.isEmpty()) {
            canvas.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        if (rows().isEmpty()) {
            Canvas middle = canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4);
            Paragraph.draw(middle, List.of(Paragraph.of(around.say("drafts.empty"))), 0, around);
            return;
        }
        ListDetail.draw(canvas, list, rows().size(), detail(around), around, (line, index, style) -> {
            KeptDraft kept = rows().get(index);
            int room = Math.max(8, line.columns() - AGE - 1);
            line.fit(0, 0, room, name(kept.draft(), around), style);
            line.fit(0, room + 1, AGE, KeptForm.age(kept.ageSeconds(), around), style);
        });
    }

    private static String name(Draft draft, Surroundings around) {
        return draft.where().isEmpty() ? draft.title() : around.say("draft.entry", draft.where(), draft.title());
    }

    private List<Paragraph> detail(Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        chosen().map(KeptDraft::draft).ifPresent(draft -> {
            text.add(Paragraph.of(name(draft, around), Style.STRONG));
            text.add(Paragraph.gap());
            draft.rig().ifPresent(rig -> text.add(Paragraph.of(around.say("drafts.rig"))));
            draft.changes().forEach(entry -> {
                String shown = entry.shown().isEmpty() ? around.say("draft.nothing") : entry.shown();
                text.add(Paragraph.of(around.say("draft.entry", entry.label(), shown)));
            });
        });
        return text;
    }
}
