package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Hands out texts with a word in each that no other has, and remembers which of them a sheet must show. */
final class Marks {

    private final UnaryOperator<String> dress;
    private final List<String> expected = new ArrayList<>();
    private int next;

    /**
     * @param dress what is written around each word
     */
    Marks(UnaryOperator<String> dress) {
        this.dress = dress;
    }

    /** A text that must be found. */
    String shown() {
        String mark = mark();
        expected.add(mark);
        return dress.apply(mark);
    }

    /** A text that is shown where something is true. */
    String shownIf(boolean condition) {
        return condition ? shown() : dress.apply(mark());
    }

    private String mark() {
        next++;
        return "q" + next + "z";
    }

    List<String> expected() {
        return List.copyOf(expected);
    }
}
