package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PartState;
import thalweg.route.Anchor;
import thalweg.route.Exposure;

/** One anchor with a table of its parts. */
final class AnchorPart {

    private static final List<String> COLUMNS = List.of(
            "sheet.part", "sheet.part.condition", "sheet.part.make", "sheet.part.placed", "sheet.part.strength");

    private final Wording wording;
    private final MakeWords make;
    private final DueLines due;

    AnchorPart(Wording wording) {
        this.wording = wording;
        this.make = new MakeWords(wording);
        this.due = new DueLines(wording);
    }

    /**
     * The section of an anchor.
     *
     * @param number among those of its station, counted from 1
     * @param exposure of that station; empty where nobody said
     */
    Section of(String station, int number, AnchorRecord record, Optional<Exposure> exposure) {
        Anchor anchor = record.anchor();
        List<Block> blocks = new ArrayList<>();
        if (!anchor.note().isBlank()) {
            blocks.add(new Block.Paragraph(Words.of(anchor.note())));
        }
        blocks.add(parts(number, record.parts(), exposure));
        return Section.of(station + "-anchor-" + number, heading(number, anchor), blocks);
    }

    String heading(int number, Anchor anchor) {
        String counted = Integer.toString(number);
        String role = wording.of("role", anchor.role());
        return anchor.name().isBlank()
                ? wording.say("sheet.anchor.heading", counted, role)
                : wording.say("sheet.anchor.heading.named", counted, role, anchor.name());
    }

    private Block parts(int number, List<PartRecord> parts, Optional<Exposure> exposure) {
        if (parts.isEmpty()) {
            return new Block.Paragraph(wording.toned(Tone.UNKNOWN, "sheet.part.none"));
        }
        return new Block.Table(
                wording.say("sheet.parts", Integer.toString(number)),
                COLUMNS.stream().map(wording::say).toList(),
                parts.stream().map(part -> row(part, exposure)).toList());
    }

    private List<Cell> row(PartRecord record, Optional<Exposure> exposure) {
        List<Words> label = new ArrayList<>();
        label.add(Words.of(record.part().label()));
        if (!record.part().note().isBlank()) {
            label.add(Words.of(record.part().note()));
        }
        return List.of(
                new Cell(label),
                new Cell(told(record, exposure)),
                new Cell(make.made(record.part())),
                new Cell(placed(record)),
                new Cell(make.strength(record.part())));
    }

    /** The condition of a part with its age, and what is due of it. */
    List<Words> told(PartRecord record, Optional<Exposure> exposure) {
        List<Words> lines = new ArrayList<>(condition(record));
        due.of(record, exposure).ifPresent(lines::add);
        return lines;
    }

    private List<Words> condition(PartRecord record) {
        PartState state = record.state();
        List<Words> lines = new ArrayList<>();
        if (state.condition().isEmpty() || state.seenOn().isEmpty()) {
            lines.add(wording.unseen(List.of(record)));
            state.notSeenSince()
                    .ifPresent(date -> lines.add(wording.toned(
                            Tone.CAUTION, "sheet.part.sought", wording.ages().ago(date))));
            return lines;
        }
        lines.add(wording.condition(state.condition().get()));
        lines.add(Words.of(wording.ages().ago(state.seenOn().get())));
        if (state.contradictory()) {
            lines.add(wording.toned(Tone.CAUTION, "sheet.part.contradictory", wording.say("condition.contradictory")));
        }
        state.notSeenSince()
                .ifPresent(date -> lines.add(wording.toned(
                        Tone.CAUTION,
                        "sheet.part.not_seen_since",
                        wording.ages().ago(date))));
        return lines;
    }

    /** A part that an inspection calls replaced may be younger than its record says. */
    private List<Words> placed(PartRecord record) {
        List<Words> lines = new ArrayList<>();
        lines.add(record.part()
                .placed()
                .map(date -> Words.of(wording.ages().old(date)))
                .orElseGet(wording::unknown));
        record.lastReplaced()
                .ifPresent(date -> lines.add(
                        wording.words("sheet.part.replaced", wording.ages().ago(date))));
        return lines;
    }
}
