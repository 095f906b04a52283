package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.place.Position;
import thalweg.place.Utm;
import thalweg.units.Length;

/** Where something is, in degrees, minutes and the UTM grid, with a link that map programs open and how far off it may be. */
final class PositionWords {

    private final Wording wording;

    PositionWords(Wording wording) {
        this.wording = wording;
    }

    List<Words> orUnknown(Optional<Position> position) {
        if (!wording.options().contents().places()) {
            return List.of(wording.toned(Tone.QUIET, "sheet.left_out.one"));
        }
        return position.map(this::of).orElseGet(() -> List.of(wording.unknown()));
    }

    List<Words> of(Position position) {
        Words accuracy = position.accuracyMetres()
                .map(metres -> wording.words("sheet.accuracy", wording.length(new Length(metres))))
                .orElseGet(() -> wording.toned(Tone.UNKNOWN, "sheet.accuracy.unknown"));
        Words grid = Utm.of(position)
                .map(utm -> wording.words("sheet.utm", utm.print()))
                .orElseGet(() -> wording.toned(Tone.QUIET, "sheet.utm.none"));
        return List.of(link(position), Words.of(position.printMinutes()), grid, accuracy);
    }

    /** In one notation, where there is room for no more. */
    static Words link(Position position) {
        return Words.of(position.printDecimal()).to(position.printGeo());
    }
}
