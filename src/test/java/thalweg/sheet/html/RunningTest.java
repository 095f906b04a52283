package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Bidi;
import org.junit.jupiter.api.Test;

final class RunningTest {

    @Test
    void aTextRunsAsItsFirstAndMostOfItsLettersDo() {
        assertThat(Running.direction("Sheepfold bridge")).isNull();
        assertThat(Running.direction("12.5 m")).isNull();
        assertThat(Running.direction("שער, the gate above the second drop")).isEqualTo("ltr");
        assertThat(Running.direction("وادي الصدى is the name on the map")).isEqualTo("ltr");
        assertThat(Running.direction("27 m, at وادي الصدى")).isEqualTo("ltr");
        assertThat(Running.direction("وادي الصدى (12 m)")).isEqualTo("rtl");
        assertThat(Running.direction("שער ראשון")).isEqualTo("rtl");
    }

    /** Levels by the Unicode Bidirectional Algorithm (UAX #9), as the JDK computes them. */
    @Test
    void aNumberBehindANameKeepsItsPlace() {
        String told = "at שער, 27 m";
        int level = new Bidi(told, Bidi.DIRECTION_LEFT_TO_RIGHT).getLevelAt(told.indexOf('2'));
        String kept = Running.kept(told);

        assertThat(level).isEqualTo(2);
        assertThat(kept.replace("\u200e", "")).isEqualTo(told);
        assertThat(new Bidi(kept, Bidi.DIRECTION_LEFT_TO_RIGHT).getLevelAt(kept.indexOf('2')))
                .isZero();
        assertThat(Running.kept("27 m, at Porte")).isEqualTo("27 m, at Porte");
        assertThat(Running.kept("שער 27")).isEqualTo("שער 27");
    }
}
