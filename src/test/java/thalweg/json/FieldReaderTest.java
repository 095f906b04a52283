package thalweg.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.Sentence;

class FieldReaderTest {

    private enum Weather {
        DRY,
        LIGHT_RAIN
    }

    private final Findings findings = new Findings();

    private FieldReader reader(String text) {
        return JsonDocument.read("text", text).reader(findings);
    }

    private String onlyFinding(String text, Consumer<FieldReader> act) {
        FieldReader in = reader(text);
        act.accept(in);
        assertThat(in.sound()).isFalse();
        assertThat(findings.all()).hasSize(1);
        return findings.all().get(0).print();
    }

    @Test
    void findingsCarryPathAndTheLineOfTheirObject() {
        FieldReader in = reader("{\n \"canyons\": [\n  {\"a\": 1},\n  {\n   \"stations\": [{\"side\": 3}]}]}");

        in.objects("canyons").get(1).objects("stations").get(0).word("side", Weather.class);

        assertThat(findings.all())
                .containsExactly(new Finding("canyons[1].stations[0].side", 5, Sentence.of("should be a text.")));
        assertThat(findings.all().get(0).print()).isEqualTo("line 5, canyons[1].stations[0].side: should be a text.");
    }

    @Test
    void aBreachInsideMakesEveryObjectAroundItUnsound() {
        FieldReader in = reader("{\"a\": {\"list\": [{\"x\": \"no number\"}, {}]}, \"b\": {}}");
        FieldReader a = in.object("a").orElseThrow();
        FieldReader b = in.object("b").orElseThrow();
        FieldReader first = a.objects("list").get(0);
        FieldReader second = a.objects("list").get(1);

        first.whole("x", 0, 1);

        assertThat(new boolean[] {in.sound(), a.sound(), first.sound(), b.sound(), second.sound()})
                .containsExactly(false, false, false, true, true);
    }

    @Test
    void missingAndNullAreTheSameAndNoBreach() {
        FieldReader in = reader("{\"n\": null}");

        for (String key : new String[] {"n", "missing"}) {
            assertThat(in.has(key)).isFalse();
            assertThat(in.textOrEmpty(key, 5)).isEmpty();
            assertThat(in.whole(key, 0, 9)).isEmpty();
            assertThat(in.real(key)).isEmpty();
            assertThat(in.reals(key)).isEmpty();
            assertThat(in.flag(key)).isEmpty();
            assertThat(in.word(key, Weather.class)).isEmpty();
            assertThat(in.words(key, Weather.class)).isEmpty();
            assertThat(in.texts(key, 5)).isEmpty();
            assertThat(in.object(key)).isEmpty();
            assertThat(in.objects(key)).isEmpty();
            assertThat(in.raw(key)).isEmpty();
        }
        assertThat(in.sound()).isTrue();
    }

    @Test
    void valuesOfTheRightKindAreRead() {
        FieldReader in = reader("""
                {"t": "abc", "w": 1.50e1, "r": 0.25, "rs": [1, 2.5], "f": true, "e": "light_rain", "es": ["dry"],
                 "ts": ["a", "b"], "o": {"x": 1}}""");

        assertThat(in.text("t", 3)).isEqualTo("abc");
        assertThat(in.whole("w", 0, 15)).isEqualTo(OptionalLong.of(15));
        assertThat(in.real("r")).isEqualTo(OptionalDouble.of(0.25));
        assertThat(in.reals("rs").orElseThrow()).containsExactly(1.0, 2.5);
        assertThat(in.flag("f")).isEqualTo(Optional.of(true));
        assertThat(in.requiredWord("e", Weather.class)).isEqualTo(Weather.LIGHT_RAIN);
        assertThat(in.words("es", Weather.class)).containsExactly(Weather.DRY);
        assertThat(in.texts("ts", 1)).containsExactly("a", "b");
        assertThat(in.raw("o").orElseThrow().values()).containsOnlyKeys("x");
        in.refuseUnasked();
        assertThat(findings.none()).isTrue();
    }

    @Test
    void lengthsAreCountedInCharactersNotInUnits() {
        FieldReader in = reader("{\"t\": \"\ud83d\ude00\ud83d\ude00\", \"ts\": [\"\ud83d\ude00\ud83d\ude00\"]}");

        assertThat(in.text("t", 2)).hasSize(4);
        assertThat(in.texts("ts", 2)).hasSize(1);
        assertThat(in.texts("ts", 1)).isEmpty();
        in.text("t", 1);
        assertThat(findings.all())
                .map(Finding::sentence)
                .containsExactly("should be a list of texts of at most 1 characters.", "is longer than 1 characters.");
    }

    @Test
    void aMissingTextIsNamed() {
        assertThat(onlyFinding("{}", in -> in.text("name", 5))).endsWith("name: is missing; it should be a text.");
    }

    @Test
    void aBlankTextIsRefused() {
        assertThat(onlyFinding("{\"name\": \" \"}", in -> in.text("name", 5)))
                .endsWith("name: is blank; leave it out where it is not known.");
    }

    @Test
    void anUnknownWordIsAnsweredWithTheKnownOnes() {
        assertThat(onlyFinding("{\"w\": \"DRY\"}", in -> in.word("w", Weather.class)))
                .endsWith("w: is \"DRY\"; it should be one of dry, light_rain.");
    }

    @Test
    void aMissingWordIsAnsweredOnce() {
        assertThat(onlyFinding("{}", in -> in.requiredWord("w", Weather.class)))
                .endsWith("w: is missing; it should be one of dry, light_rain.");
    }

    @Test
    void unknownKeysAreAnsweredWithTheKnownOnes() {
        assertThat(onlyFinding("{\"heigth\": 1}", in -> {
                    in.whole("height", 0, 9);
                    in.refuseUnasked();
                }))
                .endsWith("heigth: is a key that is not known here; known are height.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"10", "-1", "1.5", "1e300", "1e-300", "99999999999999999999"})
    void wholeNumbersStayInTheirRange(String number) {
        assertThat(onlyFinding("{\"n\": " + number + "}", in -> in.whole("n", 0, 9)))
                .endsWith("; it should be a whole number from 0 to 9.")
                .hasSizeLessThan(100);
    }

    @Test
    void aHugeNumberThatCameFromNoFileIsRefusedWithoutBeingWrittenOut() {
        for (String huge : new String[] {"1e999999999", "1e-999999999"}) {
            FieldReader in = FieldReader.of(
                    Json.fields()
                            .put("n", new Json.Decimal(new BigDecimal(huge)))
                            .done(),
                    findings);
            assertThat(in.whole("n", 0, 9)).isEmpty();
        }
        assertThat(findings.all())
                .allSatisfy(finding ->
                        assertThat(finding.print()).hasSizeLessThan(100).startsWith("n: is 1E"));
    }

    @Test
    void infinityIsNoReal() {
        FieldReader in = reader("{\"x\": 1e309, \"xs\": [1, 1e309]}");

        assertThat(in.real("x")).isEmpty();
        assertThat(in.reals("xs")).isEmpty();
        assertThat(findings.count()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "\"a\"", "true", "[1]", "{\"a\": 1}"})
    void valuesOfAnotherKindAreRefused(String value) {
        FieldReader in = reader("{\"k\": " + value + "}");

        int before = 0;
        if (!value.startsWith("\"")) {
            in.optionalText("k", 5);
            assertThat(findings.count()).isEqualTo(++before);
        }
        if (!value.equals("1")) {
            in.whole("k", 0, 9);
            in.real("k");
            before += 2;
            assertThat(findings.count()).isEqualTo(before);
        }
        if (!value.equals("true")) {
            in.flag("k");
            assertThat(findings.count()).isEqualTo(++before);
        }
        if (!value.startsWith("[")) {
            in.reals("k");
            in.objects("k");
            in.texts("k", 5);
            before += 3;
            assertThat(findings.count()).isEqualTo(before);
        } else {
            in.objects("k");
            assertThat(findings.all().get(before).path()).isEqualTo("k[0]");
            before++;
        }
        if (!value.startsWith("{")) {
            in.object("k");
            assertThat(findings.count()).isEqualTo(before + 1);
        }
    }
}
