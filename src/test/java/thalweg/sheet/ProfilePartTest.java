package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;
import thalweg.profile.Lines;

class ProfilePartTest {

    private static Sheet sheet(CanyonRecord record) {
        return SheetBuilder.build(record, SampleSheets.USUAL, SheetPhrases.ENGLISH, Map.of());
    }

    private static List<Block> profile(CanyonRecord record) {
        return SheetTexts.section(sheet(record), "profile").blocks();
    }

    @Test
    void itStandsRightAfterTheLine() {
        List<String> ids =
                SampleSheets.full().sections().stream().map(Section::id).toList();

        assertThat(ids.indexOf("profile")).isEqualTo(ids.indexOf("line") + 1);
    }

    @Test
    void oneDrawingIsForAPhoneAndOneForPaper() {
        Block.Picture picture = (Block.Picture) profile(Lines.drops(9)).get(0);

        assertThat(picture.drawing().right()).isLessThanOrEqualTo(36);
        assertThat(picture.wide().orElseThrow().right()).isBetween(60.0, 76.0);
        assertThat(picture.plain()).hasSize(10);
    }

    @Test
    void aSentenceStandsWhereNothingCanBeDrawn() {
        assertThat(SheetTexts.of(profile(Lines.of("drop|-|-", "walk|-"))))
                .containsExactly("There is no profile to draw: no height on the line is known, and fewer than two"
                        + " distances are.");
    }

    @Test
    void anEmptyLineHasNoSectionForIt() {
        assertThat(SampleSheets.bare().sections())
                .noneMatch(section -> section.id().equals("profile"));
    }

    @Test
    void whatAnOutputWithoutPicturesShowsIsInert() {
        assertThat(new Block.Picture("id", "caption", SampleFigures.drawing(), Optional.empty(), List.of("a\u202Eb\nc"))
                        .plain())
                .containsExactly("a\uFFFDb c");
    }
}
