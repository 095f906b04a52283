package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.sheet.html.HtmlSheet;
import thalweg.sheet.markdown.MarkdownSheet;
import thalweg.sheet.text.TextSheet;

class ContentsTest {

    private final FullCanyon full = new FullCanyon();
    private final CanyonRecord record = full.record();

    private Sheet sheet(CanyonRecord canyon, SheetContents contents, Map<Uid, String> notes) {
        return SheetBuilder.build(
                canyon, SampleSheets.USUAL.holding(contents, notes), SheetPhrases.ENGLISH, full.figures());
    }

    private Sheet sheet(SheetContents contents) {
        return sheet(record, contents, Map.of());
    }

    private static Stream<String> rendered(Sheet sheet) {
        return Stream.of(HtmlSheet.render(sheet), TextSheet.render(sheet), MarkdownSheet.render(sheet));
    }

    private static List<String> head(Sheet sheet) {
        return SheetTexts.of(sheet.head());
    }

    private CanyonRecord telling(String approach) {
        Canyon canyon = record.canyon();
        return new CanyonRecord(
                new Canyon(
                        canyon.uid(),
                        canyon.name(),
                        canyon.otherNames(),
                        canyon.region(),
                        canyon.country(),
                        canyon.french(),
                        canyon.american(),
                        canyon.position(),
                        canyon.times(),
                        canyon.longestDrop(),
                        canyon.prose().with(CanyonText.APPROACH, approach),
                        canyon.invented()),
                record.line(),
                record.rounds());
    }

    @Test
    void aUsualSheetLeavesNothingOutAndSaysNothingOfIt() {
        assertThat(sheet(SheetContents.USUAL)).isEqualTo(SampleSheets.full());
        assertThat(head(SampleSheets.full())).noneMatch(line -> line.startsWith("Left out"));
    }

    @Test
    void aPartOfTheCanyonHasTheFiguresOfThatPartAndSaysSo() {
        Sheet part = sheet(SheetContents.USUAL.of(Optional.of(new Stretch(1, 3))));

        assertThat(head(part))
                .contains(
                        "Part of the canyon: places 1 to 3 of " + record.line().size(),
                        "Left out at export: the other places of the line");
        assertThat(SheetTexts.of(SheetTexts.section(part, "glance").blocks()))
                .contains(
                        "Longest drop: 18 m, highest of the drops of this part",
                        "Longest rope from an anchor to its landing: 20 m, at Above the pot",
                        "Times: of the whole canyon");
        assertThat(SheetTexts.sections(part).map(Section::id))
                .contains("place-2")
                .doesNotContain("place-5");
    }

    @Test
    void theHighestStatedDropIsNotThatOfAPart() {
        List<Integer> numbers = record.line().stream().map(LineRecord::number).toList();
        CanyonRecord shown = new LeaveOut(SheetContents.USUAL.of(Optional.of(new Stretch(2, 2)))).from(record);

        assertThat(numbers).contains(2);
        assertThat(shown.canyon().longestDrop()).isEmpty();
        assertThat(shown.line()).extracting(LineRecord::number).containsExactly(2);
    }

    @Test
    void withoutPlacesNoCoordinatesStandAnywhere() {
        CanyonRecord told = telling("Park at 42.123456, -0.054321 (30T 743215 4667890).");
        Sheet sheet = sheet(told, new SheetContents(Optional.empty(), true, true, false, true, false), Map.of());

        assertThat(head(sheet)).contains("Left out at export: coordinates (in texts: those that were recognised)");
        assertThat(SheetTexts.of(SheetTexts.section(sheet, "glance").blocks()))
                .contains("Start of the descent: left out");
        assertThat(SheetTexts.of(SheetTexts.section(sheet, "about").blocks()))
                .contains("Approach: Park at [place left out] ([place left out]).");
        assertThat(rendered(sheet))
                .allSatisfy(text -> assertThat(text).doesNotContain("geo:", "42.12", "743215", "° 0"));
    }

    @Test
    void withoutNamesNobodyIsNamedAnywhere() {
        List<String> names = KnownNames.in(record);
        CanyonRecord told = telling("Ask Bruno Sample for the key.");
        Sheet sheet = sheet(told, new SheetContents(Optional.empty(), true, true, true, false, false), Map.of());

        assertThat(names).contains("Bruno Sample");
        assertThat(SheetTexts.of(SheetTexts.section(sheet, "about").blocks()))
                .contains("Approach: Ask [name left out] for the key.");
        assertThat(SheetTexts.of(
                        SheetTexts.section(sheet, "station-2-1-inspections").blocks()))
                .contains("2026-10-03, 1 month ago, by whom is left out, water low");
        assertThat(rendered(sheet)).allSatisfy(text -> assertThat(names).noneMatch(text::contains));
    }

    @Test
    void withoutHistoryAndAnalysesTheConditionStays() {
        Sheet sheet = sheet(new SheetContents(Optional.empty(), false, false, true, true, false));

        assertThat(head(sheet)).contains("Left out at export: inspections one by one; rig analyses");
        assertThat(SheetTexts.sections(sheet).map(Section::id))
                .contains("station-2-1-anchor-1")
                .noneMatch(id -> id.endsWith("-inspections") || id.contains("-analysis"));
        assertThat(SheetTexts.of(
                        SheetTexts.section(sheet, "station-2-1-anchor-1").blocks()))
                .containsSubsequence("right bolt", "? doubtful", "2026-09-12, 2 months ago");
        assertThat(rendered(sheet)).allSatisfy(text -> assertThat(text).doesNotContain("Rig analyses: none"));
    }

    @Test
    void privateNotesStandThereOnlyWhereTheyAreAskedForAndAreMarked() {
        Uid station = record.stations().get(0).station().uid();
        Map<Uid, String> notes =
                Map.of(station, "Key under the third stone.", record.canyon().uid(), "Owner is cross.");

        assertThat(sheet(record, SheetContents.USUAL, notes)).isEqualTo(SampleSheets.full());
        Sheet sheet = sheet(record, SheetContents.USUAL.withPrivateNotes(), notes);

        assertThat(head(sheet)).contains("PRIVATE");
        assertThat(sheet.footer()).contains("private notes");
        assertThat(rendered(sheet))
                .allSatisfy(text ->
                        assertThat(text).contains("Private note", "Key under the third stone.", "Owner is cross."));
    }

    @Test
    void aCardLeavesOutTheSame() {
        LineRecord place = record.line().stream()
                .filter(one -> !one.stations().isEmpty())
                .findFirst()
                .orElseThrow();
        SheetContents bare = new SheetContents(Optional.empty(), false, false, false, false, false);
        Sheet card = SheetBuilder.card(
                record, place, SampleSheets.USUAL.holding(bare, Map.of()), SheetPhrases.ENGLISH, full.figures());

        assertThat(head(card)).anyMatch(line -> line.startsWith("Left out at export"));
        assertThat(rendered(card)).allSatisfy(text -> assertThat(text).doesNotContain("geo:", "Bruno Sample"));
    }
}
