package thalweg.profile;

import java.util.List;
import thalweg.drawing.Drawing;

/**
 * A profile as it is drawn in some room, with what must be said beside it.
 *
 * @param drawing with labels laid out in letters
 * @param caption sentences: the scale, what is unknown, what the marks mean; not empty
 * @param brief the most important of them in a few words, for where there is no room; not empty
 */
public record ProfilePicture(Drawing drawing, List<String> caption, List<String> brief) {

    public ProfilePicture {
        caption = List.copyOf(caption);
        brief = List.copyOf(brief);
        if (caption.isEmpty() || brief.isEmpty()) {
            throw new IllegalArgumentException("a profile says at what scale it is drawn");
        }
    }
}
