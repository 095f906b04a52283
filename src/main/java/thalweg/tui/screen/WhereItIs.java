package thalweg.tui.screen;

import java.util.Optional;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/**
 * The coordinates that a row of a canyon's line is nearest to having, and whose they are: a station's own, else those of its
 * place, else those of the canyon.
 *
 * @param name of what lies there
 */
record WhereItIs(String name, Position position) {

    static Optional<WhereItIs> of(
            CanyonRecord canyon, Optional<LineRecord> place, Optional<StationRecord> station, Surroundings around) {
        Optional<WhereItIs> own = station.flatMap(one ->
                one.station().position().map(at -> new WhereItIs(one.station().name(), at)));
        return own.or(() -> place.flatMap(one ->
                        one.obstacle().position().map(at -> new WhereItIs(About.placeName(one, around), at))))
                .or(() -> canyon.canyon()
                        .position()
                        .map(at -> new WhereItIs(canyon.canyon().name(), at)));
    }

    /** Puts the coordinates alone on the clipboard, for a map to take, and says whose they are. */
    Step copied(Step step, Surroundings around) {
        String text = position.printDecimal();
        return step.doing(new Effect.Copy(text)).saying(around.say("copied", name, text));
    }
}
