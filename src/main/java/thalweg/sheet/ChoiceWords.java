package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;

/** What somebody chose to show, and to leave out, in words. */
final class ChoiceWords {

    private final Wording wording;

    ChoiceWords(Wording wording) {
        this.wording = wording;
    }

    /**
     * Facts for the head; none for a usual sheet.
     *
     * @param places of the whole line
     */
    List<Fact> facts(int places) {
        SheetContents contents = wording.options().contents();
        List<Fact> facts = new ArrayList<>();
        contents.stretch()
                .ifPresent(stretch -> facts.add(wording.fact(
                        "sheet.stretch",
                        wording.words(
                                "sheet.stretch.of",
                                Integer.toString(stretch.from()),
                                Integer.toString(stretch.to()),
                                Integer.toString(places)),
                        wording.toned(Tone.CAUTION, "sheet.stretch.figures"))));
        List<String> out = leftOut(contents);
        if (!out.isEmpty()) {
            facts.add(wording.fact("sheet.left_out", Words.of(String.join("; ", out))));
        }
        return facts;
    }

    private List<String> leftOut(SheetContents contents) {
        List<String> out = new ArrayList<>();
        contents.stretch().ifPresent(stretch -> out.add(wording.say("sheet.left_out.stretch")));
        if (!contents.history()) {
            out.add(wording.say("sheet.left_out.history"));
        }
        if (!contents.analyses()) {
            out.add(wording.say("sheet.left_out.analyses"));
        }
        if (!contents.places()) {
            out.add(wording.say("sheet.left_out.places"));
        }
        if (!contents.names()) {
            out.add(wording.say("sheet.left_out.names"));
        }
        return out;
    }
}
