package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** What holds for any bytes. */
class KeyDecoderLawsTest {

    private static final List<String> KNOWN = List.of(
            "j",
            "é",
            "峡",
            "🧗",
            "\r",
            "\177",
            "\001",
            "\033x",
            "\033é",
            "\033[A",
            "\033[1;5C",
            "\033[3~",
            "\033[[C",
            "\033OP",
            "\033[<0;10;5M",
            "\033[M *%",
            "\033[200~q\033[x\r\033[201~",
            "\033]11;rgb:0/0/0\007",
            "\033]52;c;YQ==\033\\",
            "\033P1+r544e\033\\",
            "\033_Gi=1\033\\",
            "\033[?1;2c",
            "\033[I",
            "\033[97;5u",
            "\033\033[A",
            "\033[27;5;9~",
            "\033[?2004;1$y");

    @Test
    void whereAReadCutsTheBytesChangesNothing() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            String text = IntStream.range(0, 4)
                    .mapToObj(i -> KNOWN.get(random.nextInt(KNOWN.size())))
                    .collect(Collectors.joining());
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            List<Message> whole = Typed.decoded(bytes);

            for (int cut = 1; cut < bytes.length; cut++) {
                assertThat(Typed.decodedInParts(bytes, cut))
                        .as("seed %d cut at %d", seed, cut)
                        .isEqualTo(whole);
            }
            assertThat(oneByOne(bytes)).as("seed %d", seed).isEqualTo(whole);
        }
    }

    private static List<Message> oneByOne(byte[] bytes) {
        KeyDecoder decoder = new KeyDecoder(false);
        List<Message> messages = new ArrayList<>();
        for (byte one : bytes) {
            messages.addAll(decoder.feed(new byte[] {one}, 1));
        }
        messages.addAll(decoder.settle());
        return messages;
    }

    @Test
    void noControlSequenceWritesACharacter() {
        for (int seed = 0; seed < 5000; seed++) {
            String sequence = controlSequence(new Random(seed));

            assertThat(written(sequence + "j")).as("seed %d", seed).isEqualTo("j");
        }
    }

    @Test
    void noControlStringWritesACharacter() {
        for (int seed = 0; seed < 2000; seed++) {
            String sequence = controlString(new Random(seed));

            assertThat(written(sequence + "j")).as("seed %d", seed).isEqualTo("j");
        }
    }

    /** CSI or SS3: parameters, intermediates, a final byte, as ECMA-48 5.4 has them, and what three of them bring along. */
    private static String controlSequence(Random random) {
        boolean csi = random.nextInt(4) > 0;
        StringBuilder text = new StringBuilder(csi ? "\033[" : "\033O");
        random.ints(random.nextInt(6), 0x30, 0x40).forEach(text::appendCodePoint);
        if (csi) {
            random.ints(random.nextInt(2), 0x20, 0x30).forEach(text::appendCodePoint);
        }
        text.append((char) (0x40 + random.nextInt(0x3F)));
        return text + broughtAlong(text.toString(), random);
    }

    private static String broughtAlong(String sequence, Random random) {
        return switch (sequence) {
            case "\033[[" -> Character.toString('A' + random.nextInt(20));
            case "\033[M" ->
                random.ints(3, 0x20, 0x7F).mapToObj(Character::toString).collect(Collectors.joining());
            case "\033[200~" -> "pasted\033[201~";
            default -> "";
        };
    }

    /** OSC, DCS, SOS, PM or APC with any text, and its end. */
    private static String controlString(Random random) {
        char opener = "]PX^_".charAt(random.nextInt(5));
        StringBuilder text = new StringBuilder("\033").append(opener);
        random.ints(random.nextInt(200), 0x20, 0x100).forEach(text::appendCodePoint);
        return text.append(opener == ']' && random.nextBoolean() ? "\007" : "\033\\")
                .toString();
    }

    @Test
    void textIsReadAsJavaReadsUtf8() {
        for (int seed = 0; seed < 1000; seed++) {
            byte[] bytes = almostText(new Random(seed));
            String expected = new String(bytes, StandardCharsets.UTF_8)
                    .codePoints()
                    .filter(codePoint -> codePoint < 0x80 || codePoint > 0x9F)
                    .mapToObj(Character::toString)
                    .collect(Collectors.joining());

            assertThat(written(Typed.decoded(bytes))).as("seed %d", seed).isEqualTo(expected);
        }
    }

    /** Bytes that begin, continue and break characters. Not ED, which Java counts in a way of its own. */
    private static byte[] almostText(Random random) {
        byte[] bytes = new byte[1 + random.nextInt(40)];
        for (int i = 0; i < bytes.length; i++) {
            int one = switch (random.nextInt(4)) {
                case 0 -> 0x20 + random.nextInt(0x5F);
                case 1 -> 0x80 + random.nextInt(0x40);
                default -> 0xC0 + random.nextInt(0x40);
            };
            bytes[i] = (byte) (one == 0xED ? 0xEC : one);
        }
        return bytes;
    }

    @Test
    void ctrlCComesThroughAfterAnyBytesButAPaste() {
        for (int seed = 0; seed < 2000; seed++) {
            Random random = new Random(seed);
            byte[] bytes = new byte[random.nextInt(60)];
            for (int i = 0; i < bytes.length; i++) {
                bytes[i] =
                        (byte) (random.nextBoolean() ? "\033[O]P\\M<;1".charAt(random.nextInt(10)) : random.nextInt());
            }
            KeyDecoder decoder = new KeyDecoder(random.nextBoolean());
            decoder.feed(bytes, bytes.length);

            assertThat(Typed.print(decoder.feed(Typed.bytes(3), 1)))
                    .as("seed %d", seed)
                    .endsWith("Ctrl-C");
        }
    }

    @Test
    void afterSomeTimeNothingIsLeftHalfDone() {
        for (int first = 0; first < 256; first++) {
            for (int second = 0; second < 256; second++) {
                KeyDecoder decoder = new KeyDecoder(false);
                decoder.feed(Typed.bytes(0x1B, first, second), 3);
                decoder.settle();

                assertThat(decoder.patience()).as("%d %d", first, second).isEqualTo(KeyDecoder.Patience.ENDLESS);
            }
        }
    }

    private static String written(String bytes) {
        return written(Typed.decoded(bytes.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private static String written(List<Message> messages) {
        return messages.stream()
                .filter(Message.KeyPressed.class::isInstance)
                .map(message -> ((Message.KeyPressed) message).key())
                .filter(key -> key.named() == Key.Named.CHARACTER && !key.ctrl())
                .map(Key::text)
                .collect(Collectors.joining());
    }
}
