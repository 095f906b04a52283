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
                case 'a' -> at(lineStart());
                case 'e' -> at(lineEnd());
                case 'u' -> without(lineStart(), cursor);
                case 'k' -> without(cursor, lineEnd());
                case 'w' -> without(wordStart(), cursor);
                default -> this;
            };
        }
        return switch (key.named()) {
            case LEFT -> at(Math.max(0, key.ctrl() ? wordStart() : cursor - 1));
            case RIGHT -> at(Math.min(clusters.size(), key.ctrl() ? wordEnd() : cursor + 1));
            case HOME -> at(lineStart());
            case END -> at(lineEnd());
            case BACKSPACE -> without(Math.max(0, cursor - 1), cursor);
            case DELETE -> without(cursor, Math.min(clusters.size(), cursor + 1));
            case UP -> manyLines ? up() : this;
            case DOWN -> manyLines ? down() : this;
            case ENTER -> manyLines ? inserted("\n") : this;
            default -> this;
        };
    }

    /** The field with a text put in at the cursor: cleaned, and cut where the field is full. */
    public TextField inserted(String text) {
        String tail = String.join("", clusters.subList(cursor, clusters.size()));
        String before = before();
        int room = Math.max(0, longest - length(before) - length(tail));
        String head = before + (manyLines ? Clean.lines(text, room) : cleanLine(text, room));
        List<String> together = Width.clusters(head + tail);
        return new TextField(together, place(together, head.length()), longest, manyLines);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** After which cluster that many characters end; a cluster that they end inside of counts. */
    private static int place(List<String> clusters, int characters) {
        int place = 0;
        for (int left = characters; left > 0; place++) {
            left -= clusters.get(place).length();
        }
        return place;
    }

    /** A space at either end is kept where {@link Clean#line} strips it: there is or will be a word beside it. */
    private static String cleanLine(String text, int room) {
        String clean = Clean.line(text, room);
        if (clean.isEmpty()) {
            return room > 0 && text.codePoints().anyMatch(Character::isSpaceChar) ? " " : "";
        }
        boolean spaceBefore = Character.isSpaceChar(text.codePointAt(0));
        boolean spaceAfter = Character.isSpaceChar(text.codePointBefore(text.length()));
        String spaced = (spaceBefore ? " " : "") + clean + (spaceAfter ? " " : "");
        return length(spaced) <= room ? spaced : clean;
    }

    private TextField at(int place) {
        return new TextField(clusters, place, longest, manyLines);
    }

    private TextField without(int from, int to) {
        List<String> rest = new ArrayList<>(clusters.subList(0, from));
        rest.addAll(clusters.subList(to, clusters.size()));
        return new TextField(rest, from, longest, manyLines);
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
