package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.Entry;
import thalweg.logbook.RiggingNote;

/** The latest rigging note in full; older ones are counted. */
final class NotePart {

    private final Wording wording;

    NotePart(Wording wording) {
        this.wording = wording;
    }

    Optional<Section> of(String station, List<Entry<RiggingNote>> notes) {
        if (notes.isEmpty()) {
            return Optional.empty();
        }
        RiggingNote latest = notes.get(0).content();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(
                wording.words("sheet.note.made", wording.ages().ago(latest.on()), wording.by(latest.by()))));
        blocks.add(new Block.Facts(texts(latest)));
        if (notes.size() > 1) {
            blocks.add(new Block.Paragraph(
                    wording.toned(Tone.QUIET, "sheet.notes.older", Integer.toString(notes.size() - 1))));
        }
        return Optional.of(Section.of(station + "-note", wording.say("sheet.note"), blocks));
    }

    /** The latest with its date, one fact a heading; empty where there is none. */
    List<Fact> latest(List<Entry<RiggingNote>> notes) {
        if (notes.isEmpty()) {
            return List.of();
        }
        RiggingNote latest = notes.get(0).content();
        List<Fact> facts = new ArrayList<>();
        facts.add(wording.fact(
                "sheet.note",
                wording.words("sheet.note.made", wording.ages().ago(latest.on()), wording.by(latest.by()))));
        facts.addAll(texts(latest));
        return facts;
    }

    private List<Fact> texts(RiggingNote note) {
        List<Fact> facts = new ArrayList<>();
        note.prose()
                .texts()
                .forEach((heading, text) -> facts.add(Fact.of(wording.of("note_text", heading), Words.of(text))));
        return facts;
    }
}
