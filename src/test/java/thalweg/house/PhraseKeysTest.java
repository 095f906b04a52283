package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How keys of phrases are found in sources. */
class PhraseKeysTest {

    private static final String FILE = "src/main/java/thalweg/Sample.java";

    @Test
    void aLiteralWithoutAPhraseIsNamedWithItsLine() {
        PhraseKeys keys = keysOf("class Sample {\n String s(Phrases p) { return p.say(\"foot.help\", 1); } }");

        assertThat(keys.missing(Set.of("foot.back"))).containsExactly(FILE + ":2: no phrase has the key foot.help");
        assertThat(keys.missing(Set.of("foot.help"))).isEmpty();
    }

    @Test
    void aConstantWithoutAPhraseIsNamedWithItsLine() {
        PhraseKeys keys = keysOf(
                "class Sample {\n static final String HELP = \"foot.help\";\n String s() { return say(HELP); } }");

        assertThat(keys.missing(Set.of())).containsExactly(FILE + ":3: no phrase has the key foot.help");
    }

    @Test
    void aCountAsksForBothItsForms() {
        PhraseKeys keys = keysOf("""
            class Sample {
                String a(Around around) { return around.phrases().count("trip.people", 3); }
                String b(Phrases phrases) { return phrases.count("trip.ropes", 1); }
                String c(List<Long> numbers) { return numbers.count("trip.others", 1); }
            }
            """);

        assertThat(keys.missing(Set.of("trip.people.one", "trip.people.other", "trip.ropes.one")))
                .containsExactly(FILE + ":3: no phrase has the key trip.ropes.other");
        assertThat(keys.isUsed("trip.people.one")).isTrue();
        assertThat(keys.isUsed("trip.others.one")).isFalse();
    }

    @Test
    void aTemplateAsksToo() {
        PhraseKeys keys = new PhraseKeys();

        keys.add("src/main/jte/sheet.jte", List.of("<h1>", "${words.say(\"sheet.title\")} <p class=\"line\">"));

        assertThat(keys.missing(Set.of()))
                .containsExactly("src/main/jte/sheet.jte:2: no phrase has the key sheet.title");
        assertThat(keys.isUsed("sheet.title")).isTrue();
        assertThat(keys.isUsed("sheet.foot")).isFalse();
    }

    @Test
    void aBeginningUsesEveryKeyOfItsFamily() {
        PhraseKeys keys = keysOf("class Sample { String s(Phrases p) { return p.say(\"side.\" + 1); } }");

        assertThat(keys.missing(Set.of())).isEmpty();
        assertThat(keys.isUsed("side.left")).isTrue();
        assertThat(keys.isUsed("sides")).isFalse();
    }

    @Test
    void theNameOfAListUsesEveryKeyOfIt() {
        PhraseKeys keys = keysOf("""
            class Sample {
                String a(Phrases p, Side s) { return Words.word(p, "side", s); }
                String b(Wording wording, Water w) { return wording.of("water", w); }
                String c(Wording wording) { return wording.say("role"); }
                String d() { return command("part"); }
            }
            """);

        assertThat(Stream.of("side.left", "water.low", "role.main", "part.bolt").filter(keys::isUsed))
                .containsExactly("side.left", "water.low");
    }

    private static PhraseKeys keysOf(String text) {
        PhraseKeys keys = new PhraseKeys();
        keys.add(JavaSource.of(FILE, text));
        return keys;
    }
}
