package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SlugTest {

    @ParameterizedTest
    @CsvSource({
        "Probe Ñandú, 01a2, probe-nandu-01a2",
        "Val d’Enfer (left), 01a2, val-d-enfer-left-01a2",
        "../../etc/passwd, 01a2, etc-passwd-01a2",
        "C:\\a|b?*, 01a2, c-a-b-01a2",
        "-rf, '', rf",
        "沢登り, 01a2, 沢登り-01a2",
        "Ущелье Тихое, 01a2, ущелье-тихое-01a2",
        "'! ?', '', unnamed",
        "'', '', unnamed",
        "' . ', '-', unnamed",
        "Straße, A/B, strasse-a-b"
    })
    void aNameBecomesSmallLettersDigitsAndDashes(String name, String idPart, String slug) {
        assertThat(Slug.of(name, idPart)).isEqualTo(slug);
    }

    /** Source: Microsoft, Naming Files, Paths, and Namespaces, the list of reserved names; listed from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "CON", "prn", "Aux", "NUL", "COM1", "com9", "LPT1", "lpt9", "COM0", "COM¹", "com²", "LPT³", "con.",
                " nul "
            })
    void noFileIsNamedLikeADevice(String name) {
        assertThat(Slug.of(name, "")).endsWith("-unnamed");
        assertThat(Slug.of("", name)).endsWith("-unnamed");
        assertThat(Slug.of(name, "01a2")).endsWith("-01a2");
    }

    @Test
    void aNameThatOnlyBeginsLikeADeviceIsKept() {
        assertThat(Slug.of("Console", "")).isEqualTo("console");
        assertThat(Slug.of("com10", "")).isEqualTo("com10");
    }

    @Test
    void aLongNameGivesWayToTheIdPart() {
        String slug = Slug.of("long ".repeat(40), "01a21293-b600");

        assertThat(slug).isEqualTo("long-long-long-long-long-long-long-long-long-01a21293-b600");
        assertThat(Slug.of("name", "9".repeat(80))).isEqualTo("9".repeat(60));
        assertThat(Slug.of("name", "9".repeat(59))).isEqualTo("9".repeat(59));
        assertThat(Slug.of("name", "9".repeat(57))).isEqualTo("na-" + "9".repeat(57));
    }

    @Test
    void everySlugIsALegalName() {
        HostileText.all().forEach(text -> {
            for (String idPart : new String[] {"", "01a2", text}) {
                assertThat(Slug.of(text, idPart))
                        .as(HostileText.spelled(text))
                        .matches("[\\p{L}\\p{M}\\p{N}]+(-[\\p{L}\\p{M}\\p{N}]+)*")
                        .hasSizeLessThanOrEqualTo(Slug.LONGEST)
                        .doesNotMatch("con|prn|aux|nul|(com|lpt)[0-9]");
            }
        });
    }
}
