package thalweg.profile;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.drawing.Drawing;

/**
 * A profile as it is drawn in some room, with what must be said beside it.
 *
 * @param drawing with labels laid out in letters
 * @param caption sentences: the scale, what is unknown, what the marks mean; not empty
 * @param brief the most important of them in a few words, for where there is no room; not empty
 * @param places where those of its places stand that it shows
 */
public record ProfilePicture(Drawing drawing, List<String> caption, List<String> brief, List<Where> places) {

    /**
     * A place on the picture.
     *
     * @param index counted from 0 along the whole line
     * @param column of its mark
     */
    public record Where(int index, int column) {}

    public ProfilePicture {
        caption = List.copyOf(caption);
        brief = List.copyOf(brief);
        places = List.copyOf(places);
        if (caption.isEmpty() || brief.isEmpty()) {
            throw new IllegalArgumentException("a profile says at what scale it is drawn");
        }
    }

    /** The place next to that column; empty where the picture shows none. */
    public Optional<Integer> nearest(int column) {
        return places.stream()
                .min(Comparator.comparingInt(place -> Math.abs(place.column() - column)))
                .map(Where::index);
    }
}
