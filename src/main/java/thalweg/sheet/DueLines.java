package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.due.Due;
import thalweg.due.DueReason;
import thalweg.due.DueRules;
import thalweg.due.DueWords;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Exposure;

/** What is due on the day of the sheet, by the figures of whoever makes it. */
final class DueLines {

    private final Wording wording;
    private final DueRules rules;

    DueLines(Wording wording) {
        this.wording = wording;
        this.rules =
                new DueRules(wording.options().settings(), wording.options().asOf());
    }

    /** How many parts of a station are due; empty where none is. */
    Optional<Words> of(StationRecord station) {
        Optional<Exposure> exposure = station.station().exposure();
        long due = station.parts().stream()
                .filter(part -> first(part, exposure).isPresent())
                .count();
        return due == 0
                ? Optional.empty()
                : Optional.of(wording.toned(
                        Tone.CAUTION,
                        "sheet.line.due",
                        Long.toString(due),
                        Integer.toString(station.parts().size())));
    }

    /** What is due of a part; empty where nothing is, and where its condition says already that nobody has seen it. */
    Optional<Words> of(PartRecord part, Optional<Exposure> exposure) {
        return first(part, exposure)
                .filter(due -> due.reason() != DueReason.NEVER_SEEN)
                .map(due -> Words.of(DueWords.what(due, wording.options().asOf(), wording.phrases()), Tone.CAUTION));
    }

    private Optional<Due> first(PartRecord part, Optional<Exposure> exposure) {
        List<Due> dues = rules.of(part.part(), part.state(), part.replacedSince(), exposure);
        return dues.stream().filter(due -> due.isDue(wording.options().asOf())).findFirst();
    }
}
