package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RigPhrasesTest {

    @Test
    void everyCautionAssumptionMaterialKnotAndTieHasItsWordsAndNothingElseHas() throws IOException {
        Properties words = new Properties();
        try (InputStream in = RigPhrasesTest.class.getResourceAsStream("/thalweg/phrases/en/rig.properties")) {
            words.load(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8));
        }

        assertThat(words.stringPropertyNames())
                .containsExactlyInAnyOrderElementsOf(Stream.of(
                                Arrays.stream(RigCaution.values()).map(RigCaution::key),
                                Arrays.stream(RigAssumption.values()).map(RigAssumption::key),
                                Arrays.stream(StrandMaterial.values()).map(StrandMaterial::key),
                                Arrays.stream(PointKind.values()).map(PointKind::key),
                                Arrays.stream(SlingTie.values()).map(SlingTie::key),
                                Arrays.stream(Knot.values()).map(Knot::key))
                        .flatMap(keys -> keys)
                        .toList());
        assertThat(words.values())
                .allSatisfy(text -> assertThat(text.toString()).isNotBlank());
        assertThat(words.getProperty(RigAssumption.DEFAULTS.key())).contains("{0}");
    }

    @Test
    void stiffnessOfMaterialRunsFromLowToHigh() {
        for (StrandMaterial material : StrandMaterial.values()) {
            assertThat(material.nominal()).isGreaterThan(material.low()).isLessThan(material.high());
        }
    }
}
