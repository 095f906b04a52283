package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Every character that the JDK knows, against the C library of GNU. */
final class CellTableTest {

    private static final BitSet UNKNOWN = new BitSet();
    private static final BitSet ZERO = new BitSet();
    private static final BitSet TWO = new BitSet();

    /** Where we mean to differ from that library, first and last. */
    private static final int[][] OTHERWISE = {
        // A Hanunoo sign that became a mark with a width of its own in Unicode 14, later than the JDK's tables.
        {0x1734, 0x1734},
        // Ambiguous in EastAsianWidth.txt: ten to eighty in circles on black squares.
        {0x3248, 0x324F},
        // Neutral in EastAsianWidth.txt 15.0.0: hexagrams.
        {0x4DC0, 0x4DFF},
    };

    static {
        try (InputStream in = Objects.requireNonNull(CellTableTest.class.getResourceAsStream("character-cells.csv"))) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(each -> !each.startsWith("#"))
                    .toList()) {
                String[] range = line.split(";", -1);
                answers(range[2]).set(Integer.parseInt(range[0], 16), Integer.parseInt(range[1], 16) + 1);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BitSet answers(String cells) {
        return switch (cells) {
            case "-1" -> UNKNOWN;
            case "0" -> ZERO;
            case "2" -> TWO;
            default -> throw new AssertionError(cells);
        };
    }

    private static boolean differsOnPurpose(int codePoint) {
        for (int[] range : OTHERWISE) {
            if (codePoint >= range[0] && codePoint <= range[1]) {
                return true;
            }
        }
        return false;
    }

    /** Source: wcwidth() of glibc 2.36, as the file says. */
    @Test
    void everyCharacterIsAsWideAsTheCLibrarySays() {
        List<String> differing = new ArrayList<>();
        int compared = 0;
        for (int codePoint = 0; codePoint <= Character.MAX_CODE_POINT; codePoint++) {
            if (!Character.isDefined(codePoint) || UNKNOWN.get(codePoint) || differsOnPurpose(codePoint)) {
                continue;
            }
            int expected = ZERO.get(codePoint) ? 0 : TWO.get(codePoint) ? 2 : 1;
            int cells = Width.ofCluster(Character.toString(codePoint));
            if (cells != expected) {
                differing.add(Integer.toHexString(codePoint) + " takes " + cells + ", not " + expected);
            }
            compared++;
        }

        assertThat(differing).isEmpty();
        assertThat(compared).isGreaterThan(270_000);
    }
}
