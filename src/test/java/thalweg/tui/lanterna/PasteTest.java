package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.tui.core.Message;

/** What is pasted is text, whatever stands in it. */
class PasteTest {

    private static final String BEGIN = "\033[200~";
    private static final String END = "\033[201~";

    @Test
    void pastedTextIsOnePieceAndNoKeys() {
        assertThat(Typed.decoded((BEGIN + "q\tdé峡" + END + "j").getBytes(StandardCharsets.UTF_8)))
                .hasSize(2)
                .first()
                .isEqualTo(new Message.Pasted("q\tdé峡"));
    }

    @Test
    void lineEndsArriveAsLineFeeds() {
        assertThat(pasted("a\rb\r\nc\nd")).isEqualTo("a\nb\nc\nd");
    }

    @Test
    void sequencesInItDoNothing() {
        assertThat(pasted("x\033[Ay\033[201")).isEqualTo("x\033[Ay\033[201");
        assertThat(pasted("\033\033[20\003")).isEqualTo("\033\033[20\003");
    }

    @Test
    void anEndThatIsAlreadyBegunMayBeginAnew() {
        assertThat(pasted("a\033[201")).isEqualTo("a\033[201");
        assertThat(pasted("\033")).isEqualTo("\033");
    }

    @Test
    void moreThanTheLimitIsDroppedUpToItsEnd() {
        String text = pasted("m".repeat(KeyDecoder.LONGEST_PASTE + 1000));

        assertThat(text).isEqualTo("m".repeat(KeyDecoder.LONGEST_PASTE));
    }

    @Test
    void aPasteThatStallsGoesOnUntilItsEnd() {
        KeyDecoder decoder = new KeyDecoder(false);
        byte[] first = (BEGIN + "first ").getBytes(StandardCharsets.UTF_8);
        byte[] second = ("second" + END).getBytes(StandardCharsets.UTF_8);

        assertThat(decoder.feed(first, first.length)).isEmpty();
        assertThat(decoder.settle()).isEmpty();
        assertThat(decoder.patience()).isEqualTo(KeyDecoder.Patience.ENDLESS);
        assertThat(decoder.feed(second, second.length)).containsExactly(new Message.Pasted("first second"));
    }

    @Test
    void ctrlCEndsAPasteThatStalled() {
        KeyDecoder decoder = new KeyDecoder(false);
        byte[] first = (BEGIN + "lost").getBytes(StandardCharsets.UTF_8);
        decoder.feed(first, first.length);
        decoder.settle();

        List<Message> messages = decoder.feed(Typed.bytes(3, 'j'), 2);

        assertThat(Typed.print(messages)).isEqualTo("Ctrl-C j");
    }

    private static String pasted(String text) {
        List<Message> messages = Typed.decoded((BEGIN + text + END).getBytes(StandardCharsets.UTF_8));
        assertThat(messages).hasSize(1).first().isInstanceOf(Message.Pasted.class);
        return ((Message.Pasted) messages.get(0)).text();
    }
}
