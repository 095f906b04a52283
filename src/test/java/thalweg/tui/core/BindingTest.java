package thalweg.tui.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What keys do, and why they do not. */
class BindingTest {

    private final Binding open = Binding.of(Key.Named.ENTER, "open", () -> {
        throw new AssertionError("nothing is done while bindings are listed");
    });

    @Test
    void aKeyThatCannotActSaysWhy() {
        assertThat(open.unless(true, "There is nothing to open.").refusal()).contains("There is nothing to open.");
        assertThat(open.unless(false, "There is nothing to open.").refusal()).isEmpty();
    }

    @Test
    void aLaterConditionThatHoldsNotKeepsAnEarlierRefusal() {
        Binding refused = open.unless(true, "There is nothing to open.").unless(false, "It is being loaded.");

        assertThat(refused.refusal()).contains("There is nothing to open.");
    }

    @Test
    void furtherKeysComeAfterTheOneThatIsShown() {
        Binding more = open.or(Key.of('o'), Key.of(Key.Named.RIGHT)).quiet();

        assertThat(more.keys()).isEqualTo(List.of(Key.of(Key.Named.ENTER), Key.of('o'), Key.of(Key.Named.RIGHT)));
        assertThat(more.atFoot()).isFalse();
    }

    @Test
    void aBindingSaysWhatItDoes() {
        assertThatIllegalArgumentException().isThrownBy(() -> Binding.of(Key.of('o'), " ", open.action()));
    }
}
