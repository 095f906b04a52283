package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
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
 * One part: itself, then everything that was found on it, one row each, and the chosen one in full beside or below.
 *
 * @param canyon in which it is
 * @param uid of the part
 * @param loaded the canyon, once it is loaded
 * @param list which row is chosen
 * @param awaited what it waits for
 */
record PartScreen(Uid canyon, Uid uid, Optional<Told.CanyonLoaded> loaded, ListState list, Awaited awaited)
        implements Screen {

    /** Not loaded yet. */
    static PartScreen opened(Go.OnePart go) {
        return new PartScreen(go.canyon(), go.part(), Optional.empty(), ListState.START, Awaited.NOTHING);
    }

    /** The part where it stands. */
    private record Place(CanyonRecord canyon, StationRecord station, AnchorRecord anchor, PartRecord part) {}

    private Optional<Place> place() {
        return loaded.map(Told.CanyonLoaded::record)
                .flatMap(record -> record.stations().stream()
                        .flatMap(station -> station.anchors().stream()
                                .flatMap(anchor -> anchor.parts().stream()
                                        .filter(part -> part.part().uid().equals(uid))
                                        .map(part -> new Place(record, station, anchor, part))))
                        .findFirst());
    }

    private List<StationRow> rows(Surroundings around) {
        return place().map(at -> StationRow.of(at.canyon(), at.anchor(), at.part(), around))
                .orElse(List.of());
    }

    private Optional<StationRow> chosen(Surroundings around) {
        List<StationRow> rows = rows(around);
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(list.chosen(), rows.size() - 1)));
    }

    @Override
    public String title(Surroundings around) {
        return place().map(at -> around.say(
                        "part.title",
                        at.station().station().name(),
                        About.anchorName(at.anchor(), around),
                        at.part().part().label()))
                .orElse(around.say(loaded.isPresent() || awaited.gone() ? "gone" : "loading"));
    }

    @Override
    public boolean waiting() {
        return loaded.isEmpty() && !awaited.gone();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        Optional<StationRow> chosen = chosen(around);
        RowKeys keys = new RowKeys(this, chosen, loaded.map(Told.CanyonLoaded::record));
        String canyonName = loaded.map(told -> told.record().canyon().name()).orElse("");
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.read"), () -> read(around))
                .unless(chosen.isEmpty(), around.say("list.empty")));
        bindings.add(keys.edit(around));
        bindings.add(Binding.of(Key.of('o'), around.say("key.over_the_years"), this::overTheYears)
                .unless(place().isEmpty(), around.say("loading")));
        bindings.add(keys.remove(around));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(keys.replace(
                place().map(Place::part),
                place().map(at -> at.canyon().countingRounds()).orElse(List.of()),
                around));
        bindings.addAll(Amending.turning(this, Optional.of(canyon), canyonName, around));
        bindings.add(keys.move(around));
        bindings.addAll(
                Lists.bindings(list, rows(around).size(), around.rows() / 2, around, to -> Step.stay(at(to, awaited))));
        return bindings;
    }

    private PartScreen at(ListState to, Awaited next) {
        return new PartScreen(canyon, uid, loaded, to, next);
    }

    private Step overTheYears() {
        Uid station = place().orElseThrow().station().station().uid();
        return Step.open(this, new Go.OverTheYears(canyon, station, Optional.of(uid)));
    }

    private Step read(Surroundings around) {
        return Step.open(
                this, new Go.Read(title(around), chosen(around).orElseThrow().detail()));
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
            PartScreen next = new PartScreen(canyon, uid, Optional.of(told), list, Awaited.NOTHING);
            return Step.stay(next.at(awaited.placed(list, uids(around), next.uids(around)), Awaited.NOTHING));
        }
        if (message instanceof Told.CanyonGone) {
            return Step.stay(new PartScreen(canyon, uid, Optional.empty(), list, Awaited.GONE));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return Step.stay(at(list.moved(wheel.rows(), rows(around).size()), awaited));
        }
        if (message instanceof Message.MousePressed mouse) {
            int size = rows(around).size();
            return ListDetail.pressed(mouse, list, size, around)
                    .map(row -> row == list.chosen() ? read(around) : Step.stay(at(list.at(row, size), awaited)))
                    .orElse(Step.stay(this));
        }
        return Step.stay(this);
    }

    private List<Optional<Uid>> uids(Surroundings around) {
        return rows(around).stream().map(row -> Optional.of(row.acts().uid())).toList();
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (place().isEmpty()) {
            boolean gone = loaded.isPresent() || awaited.gone();
            Paragraph text = gone
                    ? Paragraph.of(around.say("part.gone"), Style.ERROR)
                    : Paragraph.of(around.say("loading"), Style.FAINT);
            Paragraph.draw(canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4), List.of(text), 0, around);
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
        if (rows.size() == 1 && canvas.rows() > 2) {
            canvas.part(2, 2, 1, around.wide() ? canvas.columns() / 2 - 2 : canvas.columns() - 2)
                    .put(0, 0, around.say("part.no_entries"), Style.FAINT);
        }
    }
}
