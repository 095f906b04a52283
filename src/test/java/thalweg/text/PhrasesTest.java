package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class PhrasesTest {

    private static final Phrases PHRASES = new Phrases(Map.of(
            "plain", "unknown",
            "two", "{1} holds {0}, {1} holds",
            "braces", "{a} {} {10} {0} {",
            "bolts.one", "{0} bolt on the {1}",
            "bolts.other", "{0} bolts on the {1}"));

    @Test
    void aPhraseWithoutGapsIsSaidAsItIs() {
        assertThat(PHRASES.say("plain")).isEqualTo("unknown");
    }

    @Test
    void gapsAreFilledByNumberAndAsOftenAsTheyStand() {
        assertThat(PHRASES.say("two", 12, "left")).isEqualTo("left holds 12, left holds");
    }

    @Test
    void whatIsPutInIsNotReadAsAPattern() {
        assertThat(PHRASES.say("two", "{1} $1 \\", "{0}")).isEqualTo("{0} holds {1} $1 \\, {0} holds");
    }

    @Test
    void otherBracesStandForThemselves() {
        assertThat(PHRASES.say("braces", "x")).isEqualTo("{a} {} {10} x {");
    }

    @Test
    void aMissingKeyIsABugThatNamesIt() {
        assertThatThrownBy(() -> PHRASES.say("plane"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("plane");
    }

    @Test
    void aMissingValueIsABugThatNamesTheKeyAndTheGap() {
        assertThatThrownBy(() -> PHRASES.say("two", 12))
                .isInstanceOf(AssertionError.class)
                .hasMessageContainingAll("two", "{1}");
    }

    @Test
    void oneIsSaidInTheSingularAndAllElseInThePlural() {
        assertThat(PHRASES.count("bolts", 1, "left")).isEqualTo("1 bolt on the left");
        assertThat(PHRASES.count("bolts", 0, "left")).isEqualTo("0 bolts on the left");
        assertThat(PHRASES.count("bolts", 1200, "left")).isEqualTo("1200 bolts on the left");
        assertThatThrownBy(() -> PHRASES.count("ropes", 2))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("ropes.other");
    }

    @Test
    void nobodyChangesThePhrasesAfterwards() {
        Map<String, String> given = new HashMap<>(Map.of("b", "two", "a", "one"));
        Phrases phrases = new Phrases(given);
        given.put("c", "three");

        assertThat(phrases.all()).containsExactly(Map.entry("a", "one"), Map.entry("b", "two"));
        assertThatThrownBy(() -> phrases.all().put("d", "four")).isInstanceOf(UnsupportedOperationException.class);
    }
}
