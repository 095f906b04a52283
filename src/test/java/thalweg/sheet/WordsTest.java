package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class WordsTest {

    @Test
    void mostLettersDecideInWhichDirectionWordsRun() {
        assertThat(Words.of("Sheepfold bridge").direction()).isNull();
        assertThat(Words.of("12.5 m").direction()).isNull();
        assertThat(Words.of("שער, the gate above the second drop").direction()).isEqualTo("ltr");
        assertThat(Words.of("وادي الصدى is the name on the map").direction()).isEqualTo("ltr");
        assertThat(Words.of("وادي الصدى (12 m)").direction()).isEqualTo("rtl");
        assertThat(Words.of("שער ראשון").direction()).isEqualTo("rtl");
    }
}
