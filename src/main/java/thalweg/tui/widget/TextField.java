package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Clean;
import thalweg.text.Width;
import thalweg.tui.core.Key;

/**
 * A text that is being edited. Cursor and deletion go by what a person sees as one character.
 *
 * @param clusters the characters
 * @param cursor before which of them the next one goes, 0 to their number
 * @param longest most code points it may hold
 * @param manyLines whether it may hold line ends
 */
public record TextField(List<String> clusters, int cursor, int longest, boolean manyLines) {

    public TextField {
        clusters = List.copyOf(clusters);
        if (cursor < 0 || cursor > clusters.size()) {
            throw new IllegalArgumentException("the cursor is in the text");
        }
    }

    /** A field of one line, with the cursor after the text. */
    public static TextField of(String text, int longest) {
        List<String> clusters = Width.clusters(text);
        return new TextField(clusters, clusters.size(), longest, false);
    }

    /** A field of several lines, with the cursor after the text. */
    public static TextField lines(String text, int longest) {
        List<String> clusters = Width.clusters(text);
        return new TextField(clusters, clusters.size(), longest, true);
    }

    /** What it holds. */
    public String text() {
        return String.join("", clusters);
    }

    /** What it holds up to the cursor. */
    public String before() {
        return String.join("", clusters.subList(0, cursor));
    }

    /** The field after a key, the same one where the key means nothing here. */
    public TextField after(Key key) {
        if (key.writes()) {
            return inserted(key.text());
        }
        if (key.ctrl() && key.named() == Key.Named.CHARACTER) {
            return switch (key.codePoint()) {
                case 'a' -> at(0);
                case 'e' -> at(clusters.size());
                case 'u' -> new TextField(clusters.subList(cursor, clusters.size()), 0, longest, manyLines);
                case 'k' -> new TextField(clusters.subList(0, cursor), cursor, longest, manyLines);
                case 'w' -> withoutWord();
                default -> this;
            };
        }
        return switch (key.named()) {
            case LEFT -> at(Math.max(0, key.ctrl() ? wordStart() : cursor - 1));
            case RIGHT -> at(Math.min(clusters.size(), key.ctrl() ? wordEnd() : cursor + 1));
            case HOME -> at(lineStart());
            case END -> at(lineEnd());
            case BACKSPACE -> cursor == 0 ? this : without(cursor - 1);
            case DELETE -> cursor == clusters.size() ? this : without(cursor);
            case UP -> manyLines ? up() : this;
            case DOWN -> manyLines ? down() : this;
            case ENTER -> manyLines ? inserted("\n") : this;
            default -> this;
        };
    }

    /** The field with a text put in at the cursor: cleaned, and cut where the field is full. */
    public TextField inserted(String text) {
        String typed = manyLines ? Clean.lines(text, longest) : cleanLine(text);
        String head = before() + typed;
        String tail = String.join("", clusters.subList(cursor, clusters.size()));
        String all = head + tail;
        if (all.codePointCount(0, all.length()) > longest) {
            return this;
        }
        List<String> together = Width.clusters(all);
        int place = Width.clusters(head).size();
        return new TextField(together, Math.min(place, together.size()), longest, manyLines);
    }

    /** A space is kept where {@link Clean#line} would strip it: more may be typed behind it. */
    private String cleanLine(String text) {
        if (text.isBlank()) {
            return text.isEmpty() ? "" : " ";
        }
        String clean = Clean.line(text, longest);
        return text.endsWith(" ") ? clean + " " : clean;
    }

    private TextField at(int place) {
        return new TextField(clusters, place, longest, manyLines);
    }

    private TextField without(int index) {
        List<String> rest = new ArrayList<>(clusters);
        rest.remove(index);
        return new TextField(rest, index, longest, manyLines);
    }

    private TextField withoutWord() {
        int start = wordStart();
        List<String> rest = new ArrayList<>(clusters.subList(0, start));
        rest.addAll(clusters.subList(cursor, clusters.size()));
        return new TextField(rest, start, longest, manyLines);
    }

    private int wordStart() {
        int at = cursor;
        while (at > 0 && clusters.get(at - 1).isBlank()) {
            at--;
        }
        while (at > 0 && !clusters.get(at - 1).isBlank()) {
            at--;
        }
        return at;
    }

    private int wordEnd() {
        int at = cursor;
        while (at < clusters.size() && clusters.get(at).isBlank()) {
            at++;
        }
        while (at < clusters.size() && !clusters.get(at).isBlank()) {
            at++;
        }
        return at;
    }

    private int lineStart() {
        int at = cursor;
        while (at > 0 && !clusters.get(at - 1).equals("\n")) {
            at--;
        }
        return at;
    }

    private int lineEnd() {
        int at = cursor;
        while (at < clusters.size() && !clusters.get(at).equals("\n")) {
            at++;
        }
        return at;
    }

    private TextField up() {
        int start = lineStart();
        if (start == 0) {
            return at(0);
        }
        int column = cursor - start;
        TextField above = at(start - 1);
        int aboveStart = above.lineStart();
        return at(Math.min(aboveStart + column, start - 1));
    }

    private TextField down() {
        int end = lineEnd();
        if (end == clusters.size()) {
            return at(end);
        }
        int column = cursor - lineStart();
        TextField below = at(end + 1);
        return at(Math.min(end + 1 + column, below.lineEnd()));
    }
}
