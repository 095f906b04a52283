package thalweg.text;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Texts put together from everything that has ever gone wrong with text, from a fixed seed. */
final class HostileText {

    private static final String[] PIECES = {
        "a",
        "Z",
        "7",
        " ",
        "  ",
        "-",
        "/",
        "'",
        "…",
        "word",
        "\n",
        "\r\n",
        "\r",
        "\t",
        "\u000B",
        "\u0085",
        "\u2028",
        "\0",
        "\u0007",
        "\u001B[2J",
        "\u009B",
        "\u007F",
        "\u202E",
        "\u2066",
        "\u200E",
        "\u061C",
        "\u00AD",
        "\u200B",
        "\uFEFF",
        "\u2060",
        "\u200C",
        "\u200D",
        "\u3164",
        "\u115F",
        "\u034F",
        "\uFFFE",
        "\uFDD0",
        "\uD800",
        "\uDC00",
        "\uD83E",
        "\uDDD7",
        "\uDB40\uDC41",
        "\u0301",
        "\u0323",
        "\u0308",
        "\u0334",
        "\u05B8",
        "\u3099",
        "\u0338",
        "\u20E3",
        "\u0BBE",
        "\u0BC6",
        "ß",
        "Ł",
        "İ",
        "ı",
        "ẞ",
        "ǆ",
        "ﬃ",
        "Å",
        "ñ",
        "ς",
        "Ё",
        "שׁ",
        "ل",
        "न",
        "ी",
        "กำ",
        "ก",
        "沢",
        "登",
        "り",
        "カ",
        "ｶ",
        "ﾞ",
        "ー",
        "ᄀ",
        "ᅨ",
        "ᆨ",
        "계",
        "　",
        "\u00A0",
        "\u202F",
        "①",
        "½",
        "Ⅳ",
        "㎞",
        "🧗",
        "🏽",
        "♀",
        "\uFE0F",
        "\uFE0E",
        "🇨",
        "🇭",
        "👩‍👩‍👧",
        "1️⃣",
        "\uE000",
        "con",
        "𝒳",
        "\u1E9B\u0323",
        "\u0344"
    };

    private HostileText() {}

    /** Every piece alone, every pair of pieces, and longer texts drawn with the seed 7. */
    static Stream<String> all() {
        List<String> pieces = List.of(PIECES);
        Stream<String> pairs = pieces.stream().flatMap(first -> pieces.stream().map(second -> first + second));
        Random random = new Random(7);
        Stream<String> drawn = IntStream.range(0, 20_000)
                .mapToObj(i -> random.ints(3 + random.nextInt(12), 0, PIECES.length)
                        .mapToObj(piece -> PIECES[piece])
                        .collect(Collectors.joining()));
        return Stream.concat(
                Stream.of(""), Stream.of(pieces.stream(), pairs, drawn).flatMap(texts -> texts));
    }

    /** The text as code points in hexadecimal, to be read in a failure. */
    static String spelled(String text) {
        return text.codePoints().mapToObj(Integer::toHexString).collect(Collectors.joining(" ", "[", "]"));
    }
}
