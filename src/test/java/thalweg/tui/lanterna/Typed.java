package thalweg.tui.lanterna;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import thalweg.tui.core.Message;

/** Bytes given to a decoder, and what came out as a line that can be read. */
final class Typed {

    private Typed() {}

    /** The keys for a text in UTF-8, when nothing more comes after it. */
    static String keys(String text) {
        return keys(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same for bytes. */
    static String keys(byte[] bytes) {
        return print(decoded(bytes));
    }

    /** The messages for bytes that come at once, with time after them. */
    static List<Message> decoded(byte[] bytes) {
        return decodedInParts(bytes, bytes.length);
    }

    /** The messages for bytes that come in two reads, with no time between them. */
    static List<Message> decodedInParts(byte[] bytes, int cut) {
        KeyDecoder decoder = new KeyDecoder(false);
        byte[] rest = Arrays.copyOfRange(bytes, cut, bytes.length);
        List<Message> all = new ArrayList<>(decoder.feed(bytes, cut));
        all.addAll(decoder.feed(rest, rest.length));
        all.addAll(decoder.settle());
        return all;
    }

    /** The bytes of numbers from 0 to 255. */
    static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    /** The messages in a line: keys as they are shown to a person. */
    static String print(List<Message> messages) {
        return messages.stream()
                .map(message -> message instanceof Message.KeyPressed pressed
                        ? pressed.key().print()
                        : message.toString())
                .collect(Collectors.joining(" "));
    }
}
