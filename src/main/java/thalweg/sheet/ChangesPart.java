package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;

/** What has changed since an earlier sheet; the first thing that whoever has that one reads. */
final class ChangesPart {

    private final Wording wording;

    ChangesPart(Wording wording) {
        this.wording = wording;
    }

    Section of(SheetChanges changes) {
        List<Block> blocks = new ArrayList<>();
        if (changes.groups().isEmpty()) {
            blocks.add(new Block.Paragraph(wording.words("sheet.since.nothing")));
        } else {
            blocks.add(new Block.Facts(changes.groups().stream()
                    .map(group -> new Fact(group.heading(), group.lines()))
                    .toList()));
        }
        blocks.add(new Block.Paragraph(wording.toned(Tone.QUIET, "sheet.since.what")));
        return Section.of(
                "since",
                wording.say("sheet.since", changes.earlier(), changes.on().print()),
                blocks);
    }
}
