package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import thalweg.logbook.CanyonList;
import thalweg.logbook.Finding;
import thalweg.logbook.InView;
import thalweg.progress.Progress;
import thalweg.service.ImportRecords;
import thalweg.service.ListCanyons;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Step;
import thalweg.tui.runtime.RunAsk;

/** A list of more canyons than are read at once: invented ones, named by their place in it. */
@TestInstance(Lifecycle.PER_CLASS)
final class LongCanyonsWalkTest {

    private static final int MANY = 700;

    private static final int ROWS = 24;

    private static final Key SAVE = Key.ctrl('s');

    /** The last two bear one name; two stations have a word of their own. */
    private static final String RECORDS = IntStream.range(0, MANY)
            .mapToObj(LongCanyonsWalkTest::canyon)
            .collect(Collectors.joining(
                    ",\n", "{\"format\": \"thalweg records\", \"version\": 1, \"canyons\": [", "]}"));

    private final Walk read = filled();

    private static String name(int row) {
        return row < MANY - 2 ? String.format(Locale.ROOT, "Probe %03d", row) : "Zwilling";
    }

    private static String canyon(int row) {
        String grade = row % 100 == 99 ? ", \"french_grade\": \"v7 a1 II\"" : "";
        String line = row == 350 || row == 400
                ? ", \"line\": [{\"kind\": \"drop\", \"stations\": [{\"name\": \"Probe tree " + row + "\"}]}]"
                : "";
        return "{\"name\": \"" + name(row) + "\", \"region\": \"Vale " + row + "\"" + grade + line + "}";
    }

    private static Walk filled() {
        Walk walk = Walk.empty(ROWS, 80);
        ImportRecords records = new ImportRecords(walk.session());
        records.accept(records.preview("probe", RECORDS.getBytes(StandardCharsets.UTF_8))
                .plan());
        return walk.press(Key.Named.F5);
    }

    @AfterAll
    void close() {
        read.close();
    }

    /** Where every walk begins that changes nothing. */
    private Walk start() {
        return read.resize(ROWS, 80).openAt(new Go.Canyons());
    }

    private static String chosen(Walk walk) {
        return walk.screen()
                .lines()
                .filter(line -> line.startsWith("> "))
                .findFirst()
                .map(line -> line.substring(2).replaceAll("[│█]$", "").strip())
                .orElseThrow();
    }

    private static void isOn(Walk walk, int row) {
        assertThat(chosen(walk)).startsWith(name(row));
        assertThat(walk.screen()).doesNotContain("Loading");
    }

    private static Stream<Ask.ReadCanyons> asked(Walk walk) {
        return walk.asked().stream().filter(Ask.ReadCanyons.class::isInstance).map(Ask.ReadCanyons.class::cast);
    }

    @Test
    void theFirstAnswerHoldsEveryKeyButFewRows() {
        CanyonList list = new ListCanyons(read.session()).list(Finding.of(""), InView.top(ROWS));

        assertThat(list.keys().order().size()).isEqualTo(MANY);
        assertThat(list.rows()).hasSizeBetween(2 * ROWS, 5 * ROWS);
        assertThat(start().screen()).contains("Canyons  " + MANY).contains(name(0), name(19));
    }

    @Test
    void oneAnswerIsEnoughForTheFirstPicture() {
        RunAsk runner = new RunAsk(read.session(), "1.2.3");
        Step opened = CanyonsScreen.opened().update(new Message.Opened(), read.around());
        assertThat(opened.effects())
                .hasAtLeastOneElementOfType(Ask.FindCanyons.class)
                .filteredOn(Ask.class::isInstance)
                .hasSize(1);

        Message answer = runner.run(opened.effects().get(0), Progress.UNWATCHED);
        Step found = opened.screen().update(answer, read.around());

        assertThat(found.effects()).singleElement().isInstanceOf(Ask.LoadCanyon.class);
    }

    @Test
    void aStepReadsNoRows() {
        Walk walk = start().tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.DOWN)));

        assertThat(walk.asked()).isNotEmpty();
        assertThat(asked(walk)).isEmpty();
        walk.answerAll();
    }

    @Test
    void farRowsAreReadWhenTheyComeIntoView() {
        Walk walk = start().tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.END)));
        assertThat(walk.screen()).contains("> Loading...");
        assertThat(asked(walk))
                .singleElement()
                .satisfies(ask -> assertThat(ask.rows().size()).isLessThan(MANY / 2));

        walk.tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.ENTER)));
        assertThat(walk.screen()).contains("Canyons  ", "! Loading...");

        walk.answerAll();
        assertThat(chosen(walk)).startsWith(name(MANY - 1));
        walk.press(Key.Named.ENTER);
        assertThat(walk.screen()).contains("Zwilling", "The line is empty").doesNotContain("Canyons  ");
    }

    @Test
    void canyonsOfOneNameAreToldApartWhereverTheyStand() {
        assertThat(start().press(Key.Named.END).screen()).contains("Zwilling, Vale 698", "Zwilling, Vale 699");
    }

    @Test
    void everyMoveEndsOnTheRowThatItMeans() {
        Walk walk = start();
        Random random = new Random(6);
        int page = ROWS - 4;
        int row = 0;
        for (int i = 0; i < 150; i++) {
            int to = switch (random.nextInt(7)) {
                case 0 -> move(walk, Key.Named.UP, row - 1);
                case 1 -> move(walk, Key.Named.DOWN, row + 1);
                case 2 -> move(walk, Key.Named.PAGE_UP, row - page);
                case 3, 4 -> move(walk, Key.Named.PAGE_DOWN, row + page);
                case 5 -> {
                    walk.tell(new Message.Wheel(3));
                    yield row + 3;
                }
                default ->
                    random.nextInt(10) == 0
                            ? move(walk, random.nextBoolean() ? Key.Named.END : Key.Named.HOME, -1)
                            : row;
            };
            row = to == -1 && !chosen(walk).startsWith(name(0)) ? MANY - 1 : Math.max(0, Math.min(MANY - 1, to));
            isOn(walk, row);
        }
    }

    private static int move(Walk walk, Key.Named key, int to) {
        walk.press(key);
        return to;
    }

    @Test
    void thePageAboveAndBelowIsThereBeforeItIsAskedFor() {
        Walk walk = start();
        for (int i = 0; i < 30; i++) {
            walk.tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.PAGE_DOWN)));
            assertThat(walk.screen()).doesNotContain("Loading");
            walk.answerAll();
        }
    }

    @Test
    void theMouseMeetsTheRowThatIsThere() {
        Walk walk = start().press(Key.Named.PAGE_DOWN, 10);
        List<String> lines = walk.screen().lines().toList();

        walk.tell(new Message.MousePressed(6, 10));
        assertThat(chosen(walk)).startsWith(chosenName(lines.get(6)));
        walk.tell(new Message.MousePressed(6, 10));
        assertThat(walk.screen()).contains(chosenName(lines.get(6))).doesNotContain("Canyons  ");
    }

    private static String chosenName(String line) {
        return line.strip().substring(0, name(0).length());
    }

    @Test
    void theChoiceStaysAfterAReloadAndAReturn() {
        Walk walk = start().press(Key.Named.PAGE_DOWN, 20);
        String before = walk.screen();

        assertThat(walk.press(Key.Named.F5).screen()).isEqualTo(before);
        assertThat(walk.press(Key.Named.ENTER).press(Key.Named.ESCAPE).screen()).isEqualTo(before);
    }

    @Test
    void whatWasChosenMeanwhileStaysChosenWhenTheAnswerComes() {
        Walk walk = start().press(Key.Named.PAGE_DOWN, 20)
                .tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.F5)))
                .tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.HOME)));
        walk.answerAll();

        isOn(walk, 0);
    }

    @Test
    void wordsBeginAtTheTopAndTakenBackLeaveTheChoice() {
        Walk walk = start().press(Key.Named.PAGE_DOWN, 20).type("/probe 35").press(Key.Named.TAB);
        assertThat(walk.screen()).contains("11 of 700, 1 station");
        isOn(walk, 35);

        walk.press(Key.Named.DOWN, 7).press(Key.Named.ESCAPE);
        assertThat(walk.screen()).contains("Canyons  700");
        isOn(walk, 356);
    }

    @Test
    void stationsStandBehindTheLastCanyon() {
        Walk walk = start().type("/probe").press(Key.Named.TAB).press(Key.Named.END);
        assertThat(walk.screen()).contains("698 of 700, 2 stations", "Probe 697", "Station Probe tree 350");
        assertThat(chosen(walk)).isEqualTo("Station Probe tree 400, in Probe 400");

        assertThat(chosen(walk.press(Key.Named.F5))).isEqualTo("Station Probe tree 400, in Probe 400");
        walk.press(Key.Named.ENTER);
        assertThat(walk.screen()).contains("Station Probe tree 400").doesNotContain("Canyons  ");
        walk.press(Key.Named.ESCAPE).press(Key.Named.UP, 2);
        isOn(walk, 697);
    }

    @Test
    void enterDoesNotOpenWhatIsNotLookedForAnyMore() {
        Walk walk = start().type("/").tellUnanswered(new Message.KeyPressed(Key.of('3')));
        walk.tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.ENTER)));
        assertThat(walk.screen()).contains("Canyons  ", "! Loading...");

        walk.answerAll();
        assertThat(walk.press(Key.Named.ENTER).screen()).contains("Probe 003");
    }

    @Test
    void aFilterThatIsWidenedLeavesTheChoice() {
        Walk walk = start().type("f7").press(SAVE);
        assertThat(walk.screen()).contains("Canyons  7 of 700");
        isOn(walk, 99);

        walk.press(Key.Named.DOWN, 3).type("m");
        assertThat(walk.screen()).contains("Canyons  700");
        isOn(walk, 399);
        assertThat(walk.press(Key.Named.DOWN).screen()).contains("> (may fit) Probe 400");

        walk.type("c");
        isOn(walk, 400);
        walk.type("f7").press(SAVE);
        isOn(walk, 99);
    }

    @Test
    void rowsOfAnotherFilterAreNotTaken() {
        Walk walk = start().type("f7").press(SAVE).type("m");
        Ask.ReadCanyons before = new Ask.ReadCanyons(
                new ListCanyons(walk.session())
                        .list(Finding.of(""), InView.top(ROWS))
                        .keys()
                        .order(),
                Finding.of("").filter());

        walk.tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.F5)))
                .told(new Told.CanyonsRead(
                        before, new ListCanyons(walk.session()).rows(before.rows(), before.filter())));

        assertThat(walk.screen()).contains("(may fit) Probe 098");
        walk.answerAll();
    }

    @Test
    void aNewCanyonIsChosenWhereItStandsAndATakenOutOneLeavesItsNeighbour() {
        try (Walk walk = filled()) {
            walk.press(Key.Named.END).type("n").type("Probe 350 b").press(SAVE);
            assertThat(walk.screen()).contains("Canyons  701");
            assertThat(chosen(walk)).startsWith("Probe 350 b");

            walk.type("x");
            walk.type("entered twice").press(SAVE);
            assertThat(walk.screen()).contains("Canyons  700");
            isOn(walk, 351);
        }
    }

    @Test
    void theListIsWrittenWhole() {
        assertThat(start().type("w").screen()).contains("Write the records of 700 canyons to a file");
    }

    @Test
    void aTerminalThatGrowsFindsItsRowsRead() {
        Walk walk = start().resize(80, 200);
        assertThat(walk.screen()).contains(name(76)).doesNotContain("Loading");
    }
}
