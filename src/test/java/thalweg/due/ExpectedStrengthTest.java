package thalweg.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.ledger.Uid;
import thalweg.rig.Fibre;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;

/** What published ageing tests let one expect: WSTDA, outdoor exposure test 1997 to 2004 (nylon, polyester). */
class ExpectedStrengthTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
    private static final Uid ID = Uid.minted(1, new UUID(1, 1));

    private static Part part(PartKind kind, String material, Optional<PartialDate> placed) {
        return new Part(
                ID,
                ID,
                "V",
                "it",
                kind,
                new Part.Hardware(material, "", "", "", ""),
                placed,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private static ExpectedStrength webbing(String material, String placed) {
        return ExpectedStrength.of(
                        part(PartKind.WEBBING, material, Optional.of(PartialDate.parse(placed))),
                        Optional.empty(),
                        TODAY)
                .orElseThrow();
    }

    @Test
    void nylonOutdoorsHasLostFiftyToSixtyPercentAfterThreeYears() {
        var factor = webbing("Nylon, tubular", "2023-06-02")
                .now()
                .orElseThrow()
                .factor()
                .orElseThrow();

        assertThat(factor.low()).isCloseTo(0.40, within(0.002));
        assertThat(factor.high()).isCloseTo(0.50, within(0.002));
    }

    @Test
    void polyesterOutdoorsLevelsOffNearThirtyPercentLost() {
        var factor =
                webbing("polyester", "2024-01-01").now().orElseThrow().factor().orElseThrow();

        assertThat(factor.nominal()).isCloseTo(0.70, within(1e-9));
    }

    @Test
    void beyondTheTestItIsUnknownAndSaysSo() {
        ExpectedStrength old = webbing("nylon", "2019");

        assertThat(old.now().orElseThrow().factor()).isEmpty();
        assertThat(old.now().orElseThrow().unknown()).isTrue();
        assertThat(old.later()).anyMatch(year -> year.share().factor().isPresent());
        assertThat(old.later().get(6).share().factor()).isEmpty();
    }

    @Test
    void theReplacementCountsAndAVagueDateCountsAsItsFirstDay() {
        Part part = part(PartKind.CORD, "nylon", Optional.of(PartialDate.parse("2001")));

        assertThat(ExpectedStrength.of(part, Optional.of(PartialDate.parse("2026")), TODAY)
                        .orElseThrow()
                        .years()
                        .orElseThrow())
                .isCloseTo(151 / 365.25, within(1e-9));
    }

    @Test
    void withoutAgeOrFibreNothingIsExpectedAndMetalIsNoTextile() {
        assertThat(ExpectedStrength.of(part(PartKind.SLING, "nylon", Optional.empty()), Optional.empty(), TODAY)
                        .orElseThrow()
                        .now())
                .isEmpty();
        assertThat(webbing("hemp", "2024").now()).isEmpty();
        assertThat(ExpectedStrength.of(part(PartKind.CHAIN, "nylon", Optional.empty()), Optional.empty(), TODAY))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'Nylon, tubular', NYLON",
        "Polyamide 6, NYLON",
        "POLYESTER, POLYESTER",
        "HMPE, UHMWPE",
        "'UHMWPE, white', UHMWPE",
        "nylon and polyester, ",
        "polypropylene, ",
        "'', "
    })
    void theMaterialNamesTheFibre(String material, @Nullable Fibre fibre) {
        assertThat(ExpectedStrength.fibre(material)).isEqualTo(Optional.ofNullable(fibre));
    }
}
