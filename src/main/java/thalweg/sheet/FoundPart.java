package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/** Numbered lines, one a part, in which the group notes what it found, to be brought back. */
final class FoundPart {

    private static final List<String> COLUMNS = List.of("part", "found", "done");

    private final Wording wording;

    FoundPart(Wording wording) {
        this.wording = wording;
    }

    Section of(CanyonRecord shown) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(wording.words("sheet.found.how")));
        List<List<Cell>> rows = new ArrayList<>();
        for (StationRecord station : shown.stations()) {
            for (PartRecord part : station.parts()) {
                rows.add(List.of(
                        Cell.of(wording.words(
                                "sheet.found.line",
                                Integer.toString(rows.size() + 1),
                                station.station().name(),
                                part.part().label())),
                        Cell.of(wording.blank()),
                        Cell.of(wording.blank())));
            }
        }
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(
                    wording.say("sheet.found.table"),
                    COLUMNS.stream()
                            .map(column -> wording.say("sheet.found.column." + column))
                            .toList(),
                    rows));
        }
        blocks.add(new Block.Blanks(List.of(wording.say("sheet.found.who"), wording.say("sheet.found.else"))));
        return Section.of("found", wording.say("sheet.found"), blocks);
    }
}
