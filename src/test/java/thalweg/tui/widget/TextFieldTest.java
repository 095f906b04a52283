package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.tui.core.Key;

/** Editing a text. A bar stands for the cursor. */
class TextFieldTest {

    private static final String ASTRONAUT = "\uD83D\uDC69\u200D\uD83D\uDE80";

    /** A field with the cursor where the bar is. */
    private static TextField field(String shown, boolean manyLines) {
        String before = shown.substring(0, shown.indexOf('|'));
        String after = shown.substring(shown.indexOf('|') + 1);
        TextField field = manyLines ? TextField.lines(before + after, 100) : TextField.of(before + after, 100);
        int cursor = TextField.lines(before, 100).clusters().size();
        return new TextField(field.clusters(), cursor, 100, manyLines);
    }

    private static String shown(TextField field) {
        return field.before() + "|" + field.text().substring(field.before().length());
    }

    private static Key key(String name) {
        return name.length() == 2 && name.startsWith("^")
                ? Key.ctrl(name.charAt(1))
                : name.startsWith("^")
                        ? new Key(Key.Named.valueOf(name.substring(1)), 0, true, false, false)
                        : Key.of(Key.Named.valueOf(name));
    }

    @ParameterizedTest
    @CsvSource({
        "one two|, BACKSPACE, one tw|",
        "|one, BACKSPACE, |one",
        "o|ne, DELETE, o|e",
        "one|, DELETE, one|",
        "on|e, LEFT, o|ne",
        "|one, LEFT, |one",
        "on|e, RIGHT, one|",
        "one|, RIGHT, one|",
        "one t|wo, HOME, |one two",
        "one t|wo, END, one two|",
        "one t|wo, ^a, |one two",
        "one t|wo, ^e, one two|",
        "one t|wo, ^u, |wo",
        "one t|wo, ^k, one t|",
        "one two|, ^w, one |",
        "one two |three, ^w, one |three",
        "one two|, ^LEFT, one |two",
        "|one two, ^RIGHT, one| two",
        "one|, UP, one|",
        "one|, ENTER, one|",
        "one|, F5, one|",
        "one|, ^x, one|"
    })
    void keysEditOneLine(String before, String key, String after) {
        assertThat(shown(field(before, false).after(key(key)))).isEqualTo(after);
    }

    @ParameterizedTest
    @CsvSource({
        "one/tw|o, UP, on|e/two",
        "on|e/two, DOWN, one/tw|o",
        "a/long|er, UP, a|/longer",
        "longer|/a/b, DOWN, longer/a|/b",
        "on|e/two, UP, |one/two",
        "one/tw|o, DOWN, one/two|",
        "one/t|wo, HOME, one/|two",
        "o|ne/two, END, one|/two",
        "o|ne/two, ENTER, o/|ne/two",
        "one/t|wo, ^u, one/|wo",
        "o|ne/two, ^k, o|/two",
        "one/|two, BACKSPACE, one|two"
    })
    void keysEditSeveralLines(String before, String key, String after) {
        TextField field = field(before.replace('/', '\n'), true);

        assertThat(shown(field.after(key(key))).replace('\n', '/')).isEqualTo(after);
    }

    @Test
    void aCharacterOfManyPartsIsOneToTheCursor() {
        TextField field = TextField.of("a" + ASTRONAUT + "e\u0301", 100);

        assertThat(field.clusters()).hasSize(3);
        assertThat(field.after(Key.of(Key.Named.BACKSPACE))
                        .after(Key.of(Key.Named.BACKSPACE))
                        .text())
                .isEqualTo("a");
    }

    @Test
    void aMarkJoinsTheLetterBeforeIt() {
        TextField field = field("e|x", false).after(Key.of(0x301));

        assertThat(field.clusters()).hasSize(2);
        assertThat(field.cursor()).isEqualTo(1);
    }

    @Test
    void spacesAreKeptWhileTyping() {
        TextField field = TextField.of("", 100);
        for (char c : "12 mm  x".toCharArray()) {
            field = field.after(Key.of(c));
        }

        assertThat(field.text()).isEqualTo("12 mm  x");
    }

    @Test
    void aPastedTextGoesToTheCursorAsOneCleanLine() {
        TextField field = field("bolt| old", false);

        assertThat(shown(field.inserted(" two\nlines\u001B[2J\u202E"))).isEqualTo("bolt two lines[2J| old");
    }

    @Test
    void aPastedTextKeepsItsLinesWhereThereMayBeSome() {
        assertThat(shown(field("a|b", true).inserted("x\r\ny\t"))).isEqualTo("ax\ny |b");
    }

    @Test
    void aTextThatIsTooLongIsCutWhereTheFieldIsFull() {
        TextField field = new TextField(List.of("a", "b"), 1, 5, false);

        assertThat(shown(field.inserted("xyzuvw"))).isEqualTo("axyz|b");
        assertThat(field.inserted("xyz").after(Key.of('u'))).isEqualTo(field.inserted("xyz"));
        assertThat(new TextField(List.of("a"), 1, 3, false).inserted(ASTRONAUT).text())
                .isEqualTo("a");
    }

    @Test
    void whateverIsTypedTheCursorStaysInATextThatIsNotTooLong() {
        List<Key> keys = Stream.concat(
                        Stream.of(Key.Named.values())
                                .filter(named -> named != Key.Named.CHARACTER)
                                .map(Key::of),
                        Stream.of(
                                Key.of('a'),
                                Key.of(' '),
                                Key.of(0x6F22),
                                Key.of(0x301),
                                Key.of(0x1F469),
                                Key.of(0x200D),
                                Key.ctrl('w'),
                                Key.ctrl('u'),
                                Key.ctrl('k'),
                                Key.ctrl('a')))
                .toList();
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            TextField field = random.nextBoolean() ? TextField.of("", 12) : TextField.lines("", 12);
            for (int i = 0; i < 60; i++) {
                field = random.nextInt(12) == 0
                        ? field.inserted(" e\u0301" + ASTRONAUT + "\n漢\u0007 ")
                        : field.after(keys.get(random.nextInt(keys.size())));

                assertThat(field.text().codePointCount(0, field.text().length()))
                        .isLessThanOrEqualTo(12);
                assertThat(field.manyLines() || !field.text().contains("\n")).isTrue();
                assertThat(field.text()).startsWith(field.before());
            }
        }
    }
}
