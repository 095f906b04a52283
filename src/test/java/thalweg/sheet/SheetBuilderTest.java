package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.units.UnitSystem;

class SheetBuilderTest {

    private final FullCanyon canyon = new FullCanyon();
    private final Sheet full = build(SampleSheets.USUAL, canyon.figures());

    private Sheet build(SheetOptions options, Map<Uid, AnalysisFigures> figures) {
        return SheetBuilder.build(canyon.record(), options, SheetPhrases.ENGLISH, figures);
    }

    private List<String> texts(String section) {
        return SheetTexts.of(SheetTexts.section(full, section).blocks());
    }

    @Test
    void anInventedCanyonSaysSoFirstAndOnEveryPage() {
        assertThat(SheetTexts.of(full.head()).subList(0, 2))
                .containsExactly("INVENTED", "invented for practice, no real place");
        assertThat(full.footer()).endsWith("invented for practice, no real place");
        assertThat(SheetTexts.of(SampleSheets.bare().head())).doesNotContain("INVENTED");
    }

    @Test
    void theHeadTellsHowOldTheNewsIs() {
        assertThat(SheetTexts.of(full.head()))
                .contains(
                        "Sheet as of: 2026-11-25",
                        "Newest inspection: 2026-09-12, 2 months ago",
                        "Oldest last look at a part: 2022, at least 3 years ago",
                        "Parts never inspected: 1 of 8",
                        "Parts never inspected: looked for and never seen: 1 of 8");
    }

    @Test
    void theHeadCarriesTheCautions() {
        assertThat(SheetTexts.of(full.head()))
                .contains(
                        SheetPhrases.ENGLISH.say("caution.aid"),
                        SheetPhrases.ENGLISH.say("caution.record"),
                        SheetPhrases.ENGLISH.say("caution.unknown"));
    }

    @Test
    void gradesStandInTheirNotationAndInWordsWithTheirDoubts() {
        assertThat(texts("glance"))
                .contains(
                        "Grade, French notation: v4 a3 III",
                        "Grade, French notation: v4: drops above 30 m or a landing out of sight (second-hand);"
                                + " a3: longer swims or light current, higher jumps (from memory, unconfirmed);"
                                + " III: half a day or so (times from memory, unconfirmed)",
                        "Grade, American notation: 3 B III R");
    }

    @Test
    void theLongestDropSaysWhereItIsFrom() {
        assertThat(texts("glance")).contains("Longest drop: 38.5 m, highest of the drops on the line");
    }

    @Test
    void theLongestRopeSaysHowManyStationsAreUnknown() {
        assertThat(texts("glance"))
                .contains(
                        "Longest rope from an anchor to its landing: 40 m, at Hanging stance",
                        "Longest rope from an anchor to its landing: stations without a rope length: 1 of 3");
    }

    @Test
    void theLineShowsTheWorstOfAllAnchorsAndOfEach() {
        assertThat(texts("line"))
                .containsSubsequence(
                        "2. drop, Black Pot",
                        "120 m",
                        "18 m",
                        "Above the pot",
                        "20 m",
                        "x gone: 1 of 6",
                        "? doubtful",
                        "main anchor: ? doubtful",
                        "high-water anchor: x gone: 1 of 3, + sound",
                        "entries disagree",
                        "oldest look: 2022, at least 3 years ago",
                        "never seen: 1 of 6");
    }

    @Test
    void entriesThatDisagreeShowTheWorstAndSayIt() {
        assertThat(texts("station-2-1-anchor-1"))
                .containsSubsequence(
                        "right bolt",
                        "? doubtful",
                        "2026-09-12, 2 months ago",
                        "entries disagree around that date: the worst is shown",
                        "later not seen: 2026-10-03, 1 month ago");
    }

    @Test
    void aPartThatWasReplacedIsNotAsOldAsItsRecord() {
        assertThat(texts("station-2-1-anchor-1"))
                .containsSubsequence(
                        "webbing between the bolts",
                        "2019, at least 6 years",
                        "an inspection says replaced 2024-07, at least 2 years 3 months ago");
    }

    @Test
    void aPartSoughtInVainIsToldFromOneThatNobodyLookedFor() {
        assertThat(texts("station-2-1-anchor-2"))
                .containsSubsequence("ring", ". not seen", "looked for: 2022, at least 3 years ago");
        assertThat(texts("station-5-1-anchor-1")).containsSubsequence("sling round the pine", ". never inspected");
    }

    @Test
    void onlyTheLatestDaysOfInspectionAreShownAndTheOthersCounted() {
        assertThat(texts("station-2-1-inspections"))
                .contains(
                        "2026-10-03, 1 month ago, by Bruno Sample, water low",
                        "2024-07, at least 2 years 3 months ago, by Club outing, water low",
                        "Earlier days of inspection, not shown here: 2")
                .doesNotContain("Rust on the hanger, wiped off.");
    }

    @Test
    void moreInspectionsAreShownWhereAsked() {
        Sheet longer = build(new SheetOptions(UnitSystem.METRIC, SampleSheets.TODAY, "0.1.0", 9), Map.of());

        assertThat(SheetTexts.of(
                        SheetTexts.section(longer, "station-2-1-inspections").blocks()))
                .contains("Rust on the hanger, wiped off.", "Entry beyond the third day.")
                .noneMatch(text -> text.startsWith("Earlier days"));
    }

    @Test
    void aBareCanyonIsUnknownThroughoutAndMakesNothingUp() {
        Sheet bare = SampleSheets.bare();

        assertThat(SheetTexts.of(bare.head()))
                .contains(
                        "Where: unknown",
                        "Newest inspection: no part has been seen, as far as is recorded",
                        "Parts never inspected: no part is entered");
        assertThat(SheetTexts.of(SheetTexts.section(bare, "glance").blocks()))
                .containsExactly(
                        "Grade, French notation: unknown",
                        "Grade, American notation: unknown",
                        "Times: approach unknown",
                        "Times: descent unknown",
                        "Times: exit unknown",
                        "Longest drop: unknown",
                        "Longest rope from an anchor to its landing: no station is entered",
                        "Ropes: unknown",
                        "Ways out along the line: none entered",
                        "High-water anchors: none entered",
                        "Catchment: unknown",
                        "Start of the descent: unknown");
    }

    @Test
    void everyQuantityFollowsTheUnits() {
        List<String> imperial = SheetTexts.sections(SampleSheets.imperial())
                .flatMap(section -> SheetTexts.of(section.blocks()).stream())
                .toList();

        assertThat(imperial)
                .contains("66 ft", "across: 5620 lbf", "from the first point: 1.1 ft right, 0.3 ft down, 0.2 ft out")
                .noneMatch(text -> text.matches("(.* )?[0-9.]+ (m|kN)"));
    }

    @Test
    void aLongNameLeavesRoomForTheDayAtTheFoot() {
        RandomCanyon endless = new RandomCanyon(1, word -> word + " " + "n".repeat(3000));

        assertThat(endless.sheet().footer()).contains("… | as of 2026-11-25").hasSizeLessThan(110);
        assertThat(endless.numbered(999_999).footer())
                .contains("… | as of 2026-11-25 | sheet 999999")
                .hasSizeLessThan(110);
    }

    @Test
    void aSheetThatIsGivenOutBearsItsNumberFirstAndOnEveryPage() {
        Sheet sheet = new RandomCanyon(1, word -> word).numbered(12);

        assertThat(SheetTexts.of(sheet.head())).contains("Number: sheet 12-4f9ac1");
        assertThat(sheet.footer()).contains(" | as of 2026-11-25 | sheet 12-4f9ac1");
        assertThat(SheetTexts.of(SampleSheets.full().head())).noneMatch(text -> text.startsWith("Number"));
    }
}
