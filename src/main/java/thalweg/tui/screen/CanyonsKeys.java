package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.amend.Contents;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonRecord;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Lists;

/**
 * The keys of the list of canyons, but for those of the form of its filter.
 *
 * @param screen as it is now
 * @param around what every screen sees
 */
record CanyonsKeys(CanyonsScreen screen, Surroundings around) {

    List<Binding> all() {
        boolean nothing = screen.current() && screen.none();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.open"), screen::open)
                .unless(!screen.openable(), around.say(nothing ? "canyons.nothing_to_open" : "loading")));
        if (screen.search().open()) {
            bindings.add(clearing());
            bindings.add(Binding.of(
                    Key.Named.TAB,
                    around.say("key.search_done"),
                    () -> Step.stay(screen.with(screen.search().closed()))));
            bindings.addAll(moves().stream()
                    .filter(binding -> !binding.keys().get(0).writes())
                    .toList());
            return bindings;
        }
        bindings.add(Binding.of(
                Key.of('/'),
                around.say("key.search"),
                () -> Step.stay(screen.with(screen.search().opened()))));
        bindings.addAll(filter());
        bindings.add(Binding.of(Key.of('s'), around.say("key.stations"), () -> Step.open(screen, new Go.Stations())));
        bindings.add(Binding.of(Key.of('p'), around.say("key.parts"), () -> Step.open(screen, new Go.Parts())));
        bindings.add(Binding.of(
                Key.of('D'), around.say("key.due"), () -> Step.open(screen, new Go.DueParts(Optional.empty()))));
        bindings.add(entering(Binding.of(Key.of('n'), around.say("key.new_canyon"), this::enterNew)));
        bindings.add(entering(Binding.of(Key.of('g'), around.say("key.waypoints"), this::readWaypoints)));
        bindings.add(Binding.of(
                Key.of('t'), around.say("key.trips"), () -> Step.open(screen, new Go.Trips(Optional.empty()))));
        bindings.add(Binding.of(
                Key.of('o'), around.say("key.given"), () -> Step.open(screen, new Go.Given(Optional.empty()))));
        bindings.add(Binding.of(Key.of('w'), around.say("key.write_list"), this::write)
                .unless(screen.rows().size() == 0, around.say("canyons.nothing_to_write")));
        bindings.add(Binding.of(Key.of('S'), around.say("key.sheets"), this::writeSheets)
                .unless(screen.rows().size() == 0, around.say("canyons.nothing_to_write")));
        if (!screen.search().words().isEmpty()) {
            bindings.add(clearing());
        }
        bindings.add(Amending.taking(false, this::takeOut, around)
                .unless(screen.hits().station(screen.chosen()).isPresent(), around.say("canyons.take_out_station"))
                .unless(
                        screen.loadedDetail().isEmpty(),
                        around.say(screen.none() ? "canyons.nothing_to_open" : "loading"))
                .quiet());
        bindings.addAll(Amending.turning(screen, Optional.empty(), "", around));
        bindings.add(Binding.of(
                        Key.Named.F5,
                        around.say("key.reload"),
                        () -> Step.stay(screen).doing(screen.find(true, around)))
                .quiet());
        boolean empty = screen.found().filter(answer -> answer.all() == 0).isPresent();
        bindings.addAll(DeskKeys.of(screen, empty, around));
        bindings.addAll(moves());
        return bindings;
    }

    private Binding clearing() {
        return Binding.of(Key.Named.ESCAPE, around.say("key.clear_search"), () -> screen.cleared(around));
    }

    private Binding entering(Binding binding) {
        return binding.unless(around.readOnly(), around.say("read_only.refused"))
                .unless(screen.found().isEmpty(), around.say("loading"));
    }

    private List<Binding> filter() {
        CanyonFilter filter = screen.filter();
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.of('f'), around.say("key.filter"), () -> screen.openForm(around)));
        if (!filter.isNone()) {
            bindings.add(Binding.of(
                    Key.of('c'),
                    around.say("key.clear_filter"),
                    () -> screen.filteredBy(CanyonFilter.NONE, true, around)));
            if (screen.unknown() > 0) {
                bindings.add(Binding.of(
                        Key.of('m'),
                        around.say(filter.unknownToo() ? "key.without_unknown" : "key.unknown_too"),
                        () -> screen.filteredBy(filter.withUnknown(!filter.unknownToo()), true, around)));
            }
        }
        return bindings;
    }

    private List<Binding> moves() {
        return Lists.bindings(
                screen.rows().state(), screen.hits().size(), around.rows() - 4, around, to -> screen.moved(to, around));
    }

    private Uid spare() {
        return screen.found().orElseThrow().spare();
    }

    private Step enterNew() {
        return Step.open(screen.awaiting(Awaited.entered(spare())), new Go.EditCanyon(spare(), Optional.empty()));
    }

    private Step readWaypoints() {
        return Step.open(screen, new Go.ReadWaypoints(Optional.empty(), spare()));
    }

    private Step write() {
        return Step.open(
                screen,
                new Go.WriteCanyons(
                        screen.found().orElseThrow().finding(), screen.rows().size()));
    }

    private Step writeSheets() {
        return Step.open(
                screen,
                new Go.WriteSheets(
                        screen.found().orElseThrow().finding(), screen.rows().size()));
    }

    private Step takeOut() {
        CanyonRecord record = screen.loadedDetail().orElseThrow().record();
        return Step.open(screen, new Go.TakeOut(ThingBody.of(record.canyon()), Contents.of(record)));
    }
}
