package thalweg.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;

class ProfileLinesTest {

    private static List<String> lines(CanyonRecord record) {
        return ProfileLines.of(Profile.of(record), Pictures.METRIC);
    }

    private static long count(String line, char sign) {
        return line.chars().filter(c -> c == sign).count();
    }

    @Test
    void dotsAreTheWayAndBarsTheFall() {
        List<String> lines = lines(Lines.of(
                "walk|0 m",
                "drop|60 m|8 m|Porte|worn",
                "slide|180 m|4 m",
                "drop|380 m|22 m||unsafe",
                "swim|381 m|-|Pool"));

        assertThat(lines.get(0))
                .endsWith("Each | is 2 m of height or a part of it. Each . is 20 m along the line or a part of it.");
        assertThat(lines.subList(1, lines.size()))
                .containsExactly(
                        "1 walk",
                        "... |||| 2 drop 8 m, Porte, ~ worn",
                        "...... || 3 slide 4 m",
                        ".......... ||||||||||| 4 drop 22 m, ! unsafe",
                        ". 5 swim, Pool");
    }

    @Test
    void everySignStandsForThatMuchOrAPartOfIt() {
        double[] heights = {300, 2, 46, 151, 7};
        List<String> lines = lines(
                Lines.of("drop|0 m|300 m", "drop|10 m|2 m", "drop|900 m|46 m", "drop|950 m|151 m", "drop|2000 m|7 m"));

        assertThat(lines.get(0)).contains("Each | is 20 m", "Each . is 100 m");
        for (int i = 0; i < heights.length; i++) {
            assertThat(count(lines.get(i + 1), '|')).isEqualTo((long) Math.ceil(heights[i] / 20));
        }
        assertThat(count(lines.get(3), '.')).isEqualTo(9);
    }

    @Test
    void whatIsUnknownIsAQuestionMarkAndIsSaidFirst() {
        List<String> lines = lines(Lines.of("walk|0 m", "drop|-|5 m", "drop|100 m|-", "walk|200 m"));

        assertThat(lines.get(0))
                .contains("Heights unknown: 1 of 2 (place 3)", "Distances unknown: 1 of 4 (place 2)", "add up to 5 m");
        assertThat(lines.subList(1, 5))
                .containsExactly(
                        "1 walk", "? ||||| 2 drop 5 m, no station", "? ? 3 drop ? m, no station", ".......... 4 walk");
    }

    @Test
    void withoutDistancesThereAreNoDots() {
        List<String> lines = lines(Lines.of("drop|90 m|3 m", "drop|10 m|2 m"));

        assertThat(lines.get(0)).contains("Distances go backwards").doesNotContain("Each .");
        assertThat(lines.subList(1, 3)).containsExactly("||| 1 drop 3 m, no station", "|| 2 drop 2 m, no station");
    }

    @Test
    void feetHaveRoundNumbersOfFeet() {
        CanyonRecord canyon = Lines.of("drop|0 m|30.48 m", "drop|304.8 m|6.096 m");

        List<String> lines = ProfileLines.of(Profile.of(canyon), Pictures.IMPERIAL);

        // 100 ft and 20 ft, 1000 ft apart: 1 ft = 0.3048 m (NIST SP 811).
        assertThat(lines.get(0)).contains("Each | is 5 ft", "Each . is 100 ft");
        assertThat(lines.subList(1, 3))
                .containsExactly(
                        "||||||||||||||||||||" + " 1 drop 100 ft, no station",
                        ".......... |||| 2 drop 20 ft, no station");
    }

    @Test
    void everyLineOfRandomOnesIsShort() {
        for (long seed = 0; seed < 60; seed++) {
            Profile profile = Profile.of(Lines.random(seed, 20));
            if (profile.canBeDrawn()) {
                List<String> lines = ProfileLines.of(profile, Pictures.METRIC);

                assertThat(lines).hasSize(21);
                assertThat(lines.subList(1, 21)).allSatisfy(line -> {
                    assertThat(count(line, '|')).isLessThanOrEqualTo(20);
                    assertThat(count(line, '.')).isLessThanOrEqualTo(16 + 6);
                });
            }
        }
    }
}
