package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.amend.Fate;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Round;
import thalweg.logbook.RoundVisit;
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
 * The rounds of a canyon, newest first, and what was found on the chosen one beside or below the list.
 *
 * @param canyon whose they are
 * @param loaded the canyon, once it is loaded
 * @param rows its rounds, once it is loaded
 * @param list which row is chosen
 * @param gone whether the canyon is out of use
 */
record RoundsScreen(Uid canyon, Optional<CanyonRecord> loaded, List<RoundVisit> rows, ListState list, boolean gone)
        implements Screen {

    RoundsScreen {
        rows = List.copyOf(rows);
    }

    /** Not loaded yet. */
    static RoundsScreen opened(Uid canyon) {
        return new RoundsScreen(canyon, Optional.empty(), List.of(), ListState.START, false);
    }

    private Optional<RoundVisit> chosen() {
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    private String canyonName() {
        return loaded.map(record -> record.canyon().name()).orElse("");
    }

    @Override
    public String title(Surroundings around) {
        return loaded.isPresent() ? around.say("rounds.title", canyonName()) : around.say(gone ? "gone" : "loading");
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty() && !gone;
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String readOnly = around.say("read_only.refused");
        String nothing = around.say("rounds.empty_short");
        Optional<Entry<Round>> round = chosen().map(RoundVisit::round);
        boolean counts = round.map(Entry::counts).orElse(false);
        String refusal = round.isPresent() ? around.say("station.counts_no_longer") : nothing;
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.of('n'), around.say("key.new_round"), () -> edit(Optional.empty()))
                .unless(loaded.isEmpty(), around.say("loading"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(
                        Key.of('i'),
                        around.say("key.go_down"),
                        () -> Step.open(this, new Go.GoDown(loaded.orElseThrow())))
                .unless(loaded.isEmpty(), around.say("loading"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.read"), () -> read(around))
                .unless(round.isEmpty(), nothing));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.of('e'), around.say("key.correct"), () -> edit(round))
                .unless(!counts, refusal)
                .unless(around.readOnly(), readOnly));
        bindings.add(Amending.taking(true, () -> withdraw(around), around).unless(!counts, refusal));
        bindings.addAll(Amending.turning(this, Optional.of(canyon), canyonName(), around));
        bindings.addAll(Lists.bindings(list, rows.size(), around.rows() / 2, around, to -> Step.stay(at(to))));
        return bindings;
    }

    private RoundsScreen at(ListState to) {
        return new RoundsScreen(canyon, loaded, rows, to, gone);
    }

    private Step edit(Optional<Entry<Round>> round) {
        return Step.open(this, new Go.EditRound(canyon, canyonName(), round));
    }

    private Step read(Surroundings around) {
        return Step.open(this, new Go.Read(title(around), detail(around)));
    }

    private Step withdraw(Surroundings around) {
        Entry<Round> round = chosen().orElseThrow().round();
        String line = around.say("rounds.one", RoundChoice.label(round.content(), around));
        return Step.open(this, new Go.Withdraw(round.uid(), line));
    }

    private List<Paragraph> detail(Surroundings around) {
        return chosen().map(visit -> AboutEntry.round(visit, loaded.orElseThrow(), around))
                .orElse(List.of());
    }

    @Override
    public Step update(Message message, Surroundings around) {
        Step reload = Step.stay(this).doing(new Ask.LoadCanyon(canyon));
        if (message instanceof Message.Opened || message instanceof Message.Returned) {
            return reload;
        }
        if (message instanceof Told.Turned turned) {
            return reload.saying(Amending.said(turned, Optional.of(canyon), around));
        }
        if (message instanceof Told.CanyonLoaded told) {
            List<RoundVisit> visits = RoundVisit.all(told.record());
            ListState placed = list.at(list.chosen(), visits.size());
            return Step.stay(new RoundsScreen(canyon, Optional.of(told.record()), visits, placed, false));
        }
        if (message instanceof Told.CanyonGone) {
            return Step.stay(new RoundsScreen(canyon, Optional.empty(), List.of(), list, true));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return Step.stay(at(list.moved(wheel.rows(), rows.size())));
        }
        if (message instanceof Message.MousePressed mouse) {
            int size = rows.size();
            return ListDetail.pressed(mouse, list, size, around)
                    .map(row -> row == list.chosen() ? read(around) : Step.stay(at(list.at(row, size))))
                    .orElse(Step.stay(this));
        }
        return Step.stay(this);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty() || rows.isEmpty()) {
            Paragraph text = loaded.isPresent()
                    ? Paragraph.of(around.say("rounds.empty"))
                    : gone
                            ? Paragraph.of(around.say("canyon.gone"), Style.ERROR)
                            : Paragraph.of(around.say("loading"), Style.FAINT);
            Paragraph.draw(canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4), List.of(text), 0, around);
            return;
        }
        ListDetail.draw(
                canvas,
                list,
                rows.size(),
                detail(around),
                around,
                (line, index, style) -> paint(line, rows.get(index), style, around));
    }

    private void paint(Canvas line, RoundVisit visit, Style style, Surroundings around) {
        Fate fate = Fate.ofRound(visit.round(), loaded.orElseThrow().rounds(), around.phrases());
        String state = fate.counts()
                ? around.phrases().count("contents.part", visit.looks().size())
                : fate.word();
        Style faint = style == Style.SELECTED || fate.counts() ? style : Style.FAINT;
        int room = Math.max(4, line.columns() - Width.of(state) - 2);
        line.fit(0, 0, room, RoundChoice.label(visit.round().content(), around), faint);
        line.put(0, line.columns() - Width.of(state), state, faint);
    }
}
