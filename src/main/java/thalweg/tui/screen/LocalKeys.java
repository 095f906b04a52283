package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonName;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** The keys of a canyon that lead to what is due in it, and to what stays with this database. */
final class LocalKeys {

    private LocalKeys() {}

    static List<Binding> of(
            Screen screen,
            Optional<Told.CanyonLoaded> loaded,
            Optional<LineRecord> place,
            Optional<StationRecord> station,
            Surroundings around) {
        String readOnly = around.say("read_only.refused");
        return List.of(
                Binding.of(
                                Key.of('t'),
                                around.say("key.trips"),
                                () -> Step.open(screen, new Go.Trips(Optional.of(named(loaded)))))
                        .unless(loaded.isEmpty(), around.say("loading")),
                Binding.of(
                                Key.of('D'),
                                around.say("key.due"),
                                () -> Step.open(screen, new Go.DueParts(Optional.of(named(loaded)))))
                        .unless(loaded.isEmpty(), around.say("loading")),
                Binding.of(
                                Key.of('o'),
                                around.say("key.given"),
                                () -> Step.open(screen, new Go.Given(Optional.of(named(loaded)))))
                        .unless(loaded.isEmpty(), around.say("loading")),
                Binding.of(
                                Key.of('v'),
                                around.say("key.private_here"),
                                () -> station.map(one -> edit(
                                                screen,
                                                loaded,
                                                one.station().uid(),
                                                one.station().name()))
                                        .orElseGet(() -> edit(
                                                screen,
                                                loaded,
                                                place.orElseThrow().obstacle().uid(),
                                                About.placeName(place.orElseThrow(), around))))
                        .unless(place.isEmpty(), around.say("canyon.no_place_for_private"))
                        .unless(around.readOnly(), readOnly),
                Binding.of(Key.of('V'), around.say("key.private_canyon"), () -> editCanyon(screen, loaded))
                        .unless(around.readOnly(), readOnly)
                        .unless(loaded.isEmpty(), around.say("loading")));
    }

    private static CanyonName named(Optional<Told.CanyonLoaded> loaded) {
        return loaded.orElseThrow().record().named();
    }

    private static Step editCanyon(Screen screen, Optional<Told.CanyonLoaded> loaded) {
        var canyon = loaded.orElseThrow().record().canyon();
        return edit(screen, loaded, canyon.uid(), canyon.name());
    }

    private static Step edit(Screen screen, Optional<Told.CanyonLoaded> loaded, Uid about, String label) {
        return Step.open(
                screen,
                new Go.EditPrivateNote(
                        about, label, loaded.orElseThrow().local().notesAbout(about)));
    }
}
