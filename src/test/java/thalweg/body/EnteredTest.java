package thalweg.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.fault.InputException;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.PartialDate;

final class EnteredTest {

    private static final Uid UID = Uid.minted(1_700_000_000_000L, new UUID(1, 2));

    private static Inspection by(String name, String note) {
        return new Inspection(
                UID,
                PartialDate.parse("2026-06"),
                name,
                Optional.of(Condition.SOUND),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                note);
    }

    @Test
    void whatIsTypedIsCleanedBeforeItIsHashed() {
        Inspection entered = Entered.of(by("A\u202Eda  \u0007L.", "line one\r\nline\u200B two"));

        assertThat(entered.by()).isEqualTo("Ada L.");
        assertThat(entered.note()).isEqualTo("line one\nline two");
        assertThat(InspectionBody.read(UID, FieldReader.of(InspectionBody.write(entered), new Findings())))
                .contains(entered);
    }

    @Test
    void whatIsTooLongIsRefusedByName() {
        assertThatThrownBy(() -> Entered.of(by("x".repeat(Limits.NAME + 1), "")))
                .isInstanceOf(InputException.class)
                .hasMessage("This cannot be kept: by: is longer than 120 characters.");
    }

    @Test
    void aThingPassesTheSameDoor() {
        ThingBody anchor = ThingBody.of(new Anchor(UID, UID, "V", AnchorRole.MAIN, "up\u0000per", "a\rb"));

        ThingBody kept = Entered.of(anchor);

        assertThat(kept.label()).isEqualTo("upper");
        assertThat(kept.uid()).isEqualTo(UID);
        assertThat(Entered.of(kept)).isEqualTo(kept);
    }
}
