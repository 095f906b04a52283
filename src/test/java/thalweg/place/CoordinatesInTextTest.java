package thalweg.place;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CoordinatesInTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "42.123456, -0.054321",
                "42.123456 -0.054321",
                "42,123456; -0,054321",
                "N 42.12345 W 0.05432",
                "42.12345° N, 0.05432° W",
                "42.123° ",
                "lat=42.1",
                "longitude: -0.05",
                "42° 07.407' N, 0° 03.259' W",
                "42°07'24.4\"N 0°03'15.6\"W",
                "42° 07′ 24″ N",
                "42d07m24s N",
                "42 07.407 N, 0 03.259 W",
                "N 42 07.407 W 0 03.259",
                "geo:42.123456,-0.054321;u=10",
                "30T 743215 4667890",
                "30 T 743215mE 4667890mN",
                "31TBG 43215 67890"
            })
    void aPositionIsTakenOutOfARunningText(String position) {
        String told = CoordinatesInText.replaced("Park at " + position + " by the bridge.", "[-]");

        assertThat(told).contains("Park at", "[-]", "by the bridge.").doesNotContainPattern("\\d{2}");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Two ropes of 40 m, 60 m; a slab of 45° leads 10 m down.",
                "EN 959, 10 x 90 mm, 25.5 kN, batch 743215",
                "2026-09-12, 14:30, water 2.5, 3.5 m deep",
                "Call 112; hut +00 974 123 456",
                "Place 3, 18.25 m, 20.75 m"
            })
    void otherNumbersStay(String text) {
        assertThat(CoordinatesInText.replaced(text, "[-]")).isEqualTo(text);
    }
}
