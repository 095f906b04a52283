package thalweg.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.units.Force;
import thalweg.units.Length;

class RecordsTest {

    private static final Uid UID = Uid.minted(1, new UUID(1, 1));

    private static Canyon canyon(String name, List<String> otherNames, String region, String country, Length drop) {
        return new Canyon(
                UID,
                name,
                otherNames,
                region,
                country,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.of(drop),
                Prose.none(),
                true);
    }

    private static Obstacle obstacle(String order, Length distance, Length height) {
        return new Obstacle(
                UID,
                UID,
                order,
                ObstacleKind.DROP,
                "",
                Optional.of(distance),
                Optional.of(height),
                Optional.empty(),
                "");
    }

    private static Part part(String order, String label, Optional<Force> strength, Optional<Force> axial) {
        return new Part(
                UID,
                UID,
                order,
                label,
                PartKind.BOLT,
                Part.Hardware.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                strength,
                axial,
                Optional.empty(),
                "");
    }

    @Test
    void aCanyonHasANameAndNoNegativeDrop() {
        Length one = new Length(1);

        assertThatIllegalArgumentException().isThrownBy(() -> canyon(" ", List.of(), "", "", one));
        assertThatIllegalArgumentException().isThrownBy(() -> canyon("a", List.of(""), "", "", one));
        assertThatIllegalArgumentException().isThrownBy(() -> canyon("a", List.of(), "", "", new Length(-1)));
        assertThat(canyon("a", List.of(), "Nord", "Utopia", one).whereabouts()).isEqualTo("Nord, Utopia");
        assertThat(canyon("a", List.of(), "", "Utopia", one).whereabouts()).isEqualTo("Utopia");
        assertThat(canyon("a", List.of(), "Nord", "", one).whereabouts()).isEqualTo("Nord");
    }

    @Test
    void aPlaceOnTheLineHasAnOrderAndNoNegativeMeasures() {
        Length one = new Length(1);
        Length minus = new Length(-0.01);

        assertThat(obstacle("V", one, one).height()).contains(one);
        assertThatIllegalArgumentException().isThrownBy(() -> obstacle("", one, one));
        assertThatIllegalArgumentException().isThrownBy(() -> obstacle("V", minus, one));
        assertThatIllegalArgumentException().isThrownBy(() -> obstacle("V", one, minus));
        assertThatIllegalArgumentException().isThrownBy(() -> new Anchor(UID, UID, " ", AnchorRole.MAIN, "", ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Station(
                        UID,
                        UID,
                        "V",
                        " ",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Prose.none()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Station(
                        UID,
                        UID,
                        "V",
                        "S1",
                        Optional.empty(),
                        Optional.of(minus),
                        Optional.empty(),
                        Optional.empty(),
                        Prose.none()));
    }

    @Test
    void aPartHasALabelAndItsStrengthsAreAboveZero() {
        Optional<Force> zero = Optional.of(new Force(0));
        Optional<Force> unknown = Optional.empty();

        assertThat(part("V", "left bolt", unknown, unknown).strength()).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> part("V", "", unknown, unknown));
        assertThatIllegalArgumentException().isThrownBy(() -> part("", "left bolt", unknown, unknown));
        assertThatIllegalArgumentException().isThrownBy(() -> part("V", "left bolt", zero, unknown));
        assertThatIllegalArgumentException().isThrownBy(() -> part("V", "left bolt", unknown, zero));
    }

    @Test
    void timesAreFromAMinuteToAWeek() {
        assertThat(new Times(Optional.of(1), Optional.of(10_000), Optional.empty()).exitMinutes())
                .isEmpty();
        for (int wrong : new int[] {0, -1, 10_001}) {
            Optional<Integer> minutes = Optional.of(wrong);
            Optional<Integer> unknown = Optional.empty();
            assertThatIllegalArgumentException().isThrownBy(() -> new Times(minutes, unknown, unknown));
            assertThatIllegalArgumentException().isThrownBy(() -> new Times(unknown, minutes, unknown));
            assertThatIllegalArgumentException().isThrownBy(() -> new Times(unknown, unknown, minutes));
        }
    }

    @Test
    void proseStandsInTheOrderOfItsHeadingsAndHoldsNoBlanks() {
        Map<CanyonText, String> texts = new HashMap<>();
        texts.put(CanyonText.NOTES, "n");
        texts.put(CanyonText.ROPES, "r");
        Prose<CanyonText> prose = new Prose<>(texts);
        texts.clear();

        assertThat(prose.texts().keySet()).containsExactly(CanyonText.ROPES, CanyonText.NOTES);
        assertThat(prose.with(CanyonText.EXIT, "e").texts().keySet())
                .containsExactly(CanyonText.ROPES, CanyonText.EXIT, CanyonText.NOTES);
        assertThat(prose.with(CanyonText.NOTES, " ").under(CanyonText.NOTES)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> new Prose<>(Map.of(CanyonText.EXIT, "\n")));
    }

    @Test
    void aCanyonsNamesCannotChangeBehindItsBack() {
        List<String> names = new ArrayList<>(List.of("b"));
        Canyon canyon = canyon("a", names, "", "", new Length(1));

        names.add("c");

        assertThat(canyon.otherNames()).containsExactly("b");
    }

    @Test
    void kindsKnowWhatTheyAre() {
        assertThat(List.of(PartKind.values()).stream().filter(PartKind::isPoint))
                .hasSize(8);
        assertThat(List.of(ObstacleKind.values()).stream().filter(ObstacleKind::usuallyRigged))
                .containsExactly(ObstacleKind.DROP, ObstacleKind.HANDLINE);
    }
}
