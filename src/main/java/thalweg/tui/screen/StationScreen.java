package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Round;
import thalweg.logbook.StationRecord;
import thalweg.rig.KeptRig;
import thalweg.rig.RigInput;
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
 * One station: its anchors with their parts, its notes and analyses, and the chosen one in full beside or below the list.
 *
 * @param canyon in which it is
 * @param uid of the station
 * @param loaded the canyon, once it is loaded
 * @param list which row is chosen
 * @param awaited what it waits for
 */
record StationScreen(Uid canyon, Uid uid, Optional<Told.CanyonLoaded> loaded, ListState list, Awaited awaited)
        implements Screen {

    /** Not loaded yet. */
    static StationScreen opened(Go.OneStation go) {
        return new StationScreen(go.canyon(), go.station(), Optional.empty(), ListState.START, Awaited.NOTHING);
    }

    private Optional<StationRecord> station() {
        return loaded.flatMap(told -> told.record().station(uid));
    }

    private List<StationRow> rows(Surroundings around) {
        return station()
                .map(record -> withPrivateNote(
                        StationRow.of(record, loaded.orElseThrow().rigs(), around), around))
                .orElse(List.of());
    }

    private List<StationRow> withPrivateNote(List<StationRow> rows, Surroundings around) {
        LocalRecord local = loaded.orElseThrow().local();
        List<StationRow> all = new ArrayList<>(rows);
        if (!local.notesAbout(uid).isEmpty()) {
            List<Paragraph> detail = AboutLocal.withNote(rows.get(0).detail(), local, uid, around);
            all.set(0, rows.get(0).withPrivateNote(detail, around));
        }
        return all;
    }

    private Optional<StationRow> chosen(Surroundings around) {
        List<StationRow> rows = rows(around);
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        return loaded.flatMap(told -> station()
                        .map(record -> name(told.record(), around) + " / "
                                + told.record()
                                        .placeOf(uid)
                                        .map(place -> About.placeName(place, around) + " / ")
                                        .orElse("")
                                + record.station().name()))
                .orElse(around.say(loaded.isPresent() || awaited.gone() ? "gone" : "loading"));
    }

    /** An invented canyon says so wherever its name stands. */
    private static String name(CanyonRecord record, Surroundings around) {
        String name = record.canyon().name();
        return record.canyon().invented() ? name + " " + around.say("canyons.invented") : name;
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty() && !awaited.gone();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        String readOnly = around.say("read_only.refused");
        boolean waiting = station().isEmpty();
        boolean noParts = station().map(record -> record.parts().isEmpty()).orElse(true);
        boolean noAnchor = station().map(record -> record.anchors().isEmpty()).orElse(true);
        Optional<StationRow> chosen = chosen(around);
        RowKeys keys = new RowKeys(this, chosen, loaded.map(Told.CanyonLoaded::record));
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.of('i'), around.say("key.inspect"), () -> inspect(around))
                .unless(noParts, around.say("station.nothing_to_inspect"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(
                        Key.of('r'),
                        around.say(kept(around).isPresent() ? "key.rig_again" : "key.rig"),
                        () -> openRig(around))
                .unless(noAnchor, around.say("station.no_anchor")));
        bindings.add(Binding.of(Key.of('n'), around.say("key.new_note"), this::writeNote)
                .unless(around.readOnly(), readOnly)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open"), () -> open(around))
                .unless(chosen.isEmpty(), around.say("list.empty")));
        bindings.add(
                Binding.of(Key.of('c'), around.say("key.its_canyon"), () -> Step.open(this, new Go.OneCanyon(canyon)))
                        .quiet());
        bindings.add(keys.edit(around));
        bindings.add(Binding.of(Key.of('p'), around.say("key.new_part"), () -> newPart(around))
                .unless(noAnchor, around.say("station.anchor_first"))
                .unless(around.readOnly(), readOnly));
        bindings.add(Binding.of(Key.of('a'), around.say("key.new_anchor"), this::newAnchor)
                .unless(around.readOnly(), readOnly)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('w'), around.say("key.card"), this::writeCard)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('v'), around.say("key.private_here"), this::editPrivate)
                .unless(around.readOnly(), readOnly)
                .unless(waiting, around.say("loading")));
        bindings.add(Binding.of(Key.of('o'), around.say("key.over_the_years"), () -> overTheYears(around))
                .unless(noParts, around.say("timeline.none")));
        bindings.add(keys.remove(around));
        bindings.add(keys.replace(part(around), loaded.map(told -> rounds()).orElse(List.of()), around));
        bindings.addAll(Amending.turning(this, Optional.of(canyon), canyonName(), around));
        bindings.add(keys.move(around));
        bindings.addAll(Amending.shifting(by -> shifted(by, around), keys.shiftRefusal(around), around));
        bindings.add(Binding.of(Key.of('y'), around.say("key.copy_station"), () -> copy(around))
                .unless(waiting, around.say("loading"))
                .quiet());
        bindings.addAll(Lists.bindings(list, rows(around).size(), around.rows() / 2, around, this::moved));
        return bindings;
    }

    private Step writeCard() {
        String name = station().orElseThrow().station().name();
        return Step.open(
                this,
                new Go.WriteSheet(
                        canyon, name, Optional.of(uid), loaded.orElseThrow().local(), Optional.empty()));
    }

    private Step moved(ListState to) {
        return Step.stay(new StationScreen(canyon, uid, loaded, to, awaited));
    }

    private StationScreen awaiting(Awaited next) {
        return new StationScreen(canyon, uid, loaded, list, next);
    }

    private List<Entry<Round>> rounds() {
        return loaded.orElseThrow().record().countingRounds();
    }

    private String canyonName() {
        return loaded.map(told -> told.record().canyon().name()).orElse("");
    }

    private Step shifted(int by, Surroundings around) {
        Uid thing = chosen(around).orElseThrow().acts().uid();
        return awaited.saving()
                ? Step.stay(this)
                : RowKeys.shifted(
                        this,
                        awaiting(Awaited.moved(thing)),
                        loaded.orElseThrow().record(),
                        thing,
                        by,
                        around);
    }

    private Uid spare() {
        return loaded.orElseThrow().spare();
    }

    /** The anchor of the chosen row, or the first. */
    private AnchorRecord anchor(Surroundings around) {
        return chosen(around)
                .flatMap(StationRow::anchor)
                .orElseGet(() -> station().orElseThrow().anchors().get(0));
    }

    /** The rig of the chosen row, if that is an analysis. */
    private Optional<RigInput> kept(Surroundings around) {
        return loaded.flatMap(told -> chosen(around)
                        .flatMap(row ->
                                Optional.ofNullable(told.rigs().get(row.acts().uid()))))
                .map(KeptRig::input);
    }

    private Step openRig(Surroundings around) {
        Optional<RigInput> kept = kept(around);
        Optional<Uid> analysis =
                kept.flatMap(input -> chosen(around).map(row -> row.acts().uid()));
        return Step.open(this, new Go.Rig(station().orElseThrow(), anchor(around), kept, analysis));
    }

    private Optional<PartRecord> part(Surroundings around) {
        return chosen(around)
                .flatMap(row ->
                        station().flatMap(record -> record.part(row.acts().uid())));
    }

    private Optional<Uid> partUid(Surroundings around) {
        return part(around).map(chosen -> chosen.part().uid());
    }

    private Step inspect(Surroundings around) {
        return Step.open(this, new Go.Inspect(station().orElseThrow(), rounds(), partUid(around)));
    }

    private Step overTheYears(Surroundings around) {
        return Step.open(this, new Go.OverTheYears(canyon, uid, partUid(around)));
    }

    private Step writeNote() {
        return Step.open(
                this, new Go.WriteNote(uid, station().orElseThrow().station().name()));
    }

    private Step editPrivate() {
        String name = station().orElseThrow().station().name();
        return Step.open(
                this,
                new Go.EditPrivateNote(uid, name, loaded.orElseThrow().local().notesAbout(uid)));
    }

    /** A part opens with everything that was found on it; anything else is read. */
    private Step open(Surroundings around) {
        StationRow row = chosen(around).orElseThrow();
        return partUid(around)
                .map(part -> Step.open(this, new Go.OnePart(canyon, part)))
                .orElseGet(() -> Step.open(this, new Go.Read(title(around), row.detail())));
    }

    private Step copy(Surroundings around) {
        String text = String.join(
                "\n",
                About.station(station().orElseThrow(), around).stream()
                        .map(Paragraph::text)
                        .toList());
        return Step.stay(this)
                .doing(new Effect.Copy(title(around) + "\n" + text))
                .saying(around.say("copied.station"));
    }

    private Step newPart(Surroundings around) {
        AnchorRecord anchor = anchor(around);
        String last = anchor.parts().stream().map(part -> part.part().order()).reduce("", (one, other) -> other);
        return Step.open(
                awaiting(Awaited.entered(spare())),
                new Go.EditPart(spare(), anchor.anchor().uid(), OrderKey.between(last, ""), Optional.empty()));
    }

    private Step newAnchor() {
        String last = station().orElseThrow().anchors().stream()
                .map(anchor -> anchor.anchor().order())
                .reduce("", (one, other) -> other);
        return Step.open(
                awaiting(Awaited.entered(spare())),
                new Go.EditAnchor(spare(), uid, OrderKey.between(last, ""), Optional.empty()));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        Step reload = Step.stay(this).doing(new Ask.LoadCanyon(canyon));
        if (message instanceof Message.Opened || message instanceof Message.Returned || message instanceof Told.Saved) {
            return reload;
        }
        if (message instanceof Told.Turned turned) {
            return reload.saying(Amending.said(turned, Optional.of(canyon), around));
        }
        if (message instanceof Told.CanyonLoaded told) {
            return Step.stay(loaded(told, around));
        }
        if (message instanceof Told.CanyonGone) {
            return Step.stay(new StationScreen(canyon, uid, Optional.empty(), list, Awaited.GONE));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(awaiting(Awaited.NOTHING)).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(list.moved(wheel.rows(), rows(around).size()));
        }
        if (message instanceof Message.MousePressed mouse) {
            return ListDetail.pressed(mouse, list, rows(around).size(), around)
                    .map(row -> row == list.chosen()
                            ? open(around)
                            : moved(list.at(row, rows(around).size())))
                    .orElse(Step.stay(this));
        }
        return Step.stay(this);
    }

    private StationScreen loaded(Told.CanyonLoaded told, Surroundings around) {
        StationScreen next = new StationScreen(canyon, uid, Optional.of(told), list, Awaited.NOTHING);
        ListState placed = awaited.placed(list, uids(around), next.uids(around));
        return new StationScreen(canyon, uid, Optional.of(told), placed, Awaited.NOTHING);
    }

    private List<Optional<Uid>> uids(Surroundings around) {
        return rows(around).stream().map(row -> Optional.of(row.acts().uid())).toList();
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (loaded.isEmpty() && !awaited.gone()) {
            canvas.put(1, 2, around.say("loading"), Style.FAINT);
            return;
        }
        if (station().isEmpty()) {
            Canvas text = canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4);
            Paragraph.draw(text, List.of(Paragraph.of(around.say("station.gone"), Style.ERROR)), 0, around);
            return;
        }
        List<StationRow> rows = rows(around);
        List<Paragraph> detail = chosen(around).map(StationRow::detail).orElse(List.of());
        ListDetail.draw(
                canvas,
                list,
                rows.size(),
                detail,
                around,
                (line, index, style) -> rows.get(index).paint(line, style));
    }
}
