package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.logbook.CanyonRecord;
import thalweg.profile.Profile;
import thalweg.profile.ProfileDrawing;
import thalweg.profile.ProfilePicture;
import thalweg.profile.ProfileWords;
import thalweg.profile.Room;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.DrawingView;

/** The picture of a profile with what must be said below it, in whatever room there is. */
final class ProfilePane {

    /** Rows that a profile takes below something else. */
    private static final int BELOW = 20;

    /** Of the rows, what the caption may take in full; otherwise it is told in brief. */
    private static final int CAPTION_PART = 4;

    private static final int MOST_BRIEF = 2;

    private ProfilePane() {}

    /** The words for a profile, as the terminal shows its marks. */
    static ProfileWords words(Surroundings around) {
        ProfileWords words = new ProfileWords(around.phrases(), around.units());
        return around.glyphs() == Glyphs.ASCII ? words.withLetters() : words;
    }

    /**
     * The whole line with one of its places marked, below a text, if there is room left and something to draw.
     *
     * @param above rows that the text takes
     */
    static void below(Canvas canvas, int above, CanyonRecord record, int chosen, Surroundings around) {
        Profile profile = Profile.of(record);
        if (above + 1 + BELOW <= canvas.rows() && profile.canBeDrawn()) {
            draw(canvas.part(canvas.rows() - BELOW, 0, BELOW, canvas.columns()), profile, chosen, 1, around);
        }
    }

    /**
     * A part of the line around the chosen place.
     *
     * @param profile that can be drawn
     * @param chosen the place, counted from 0
     * @param times how many such parts make the whole
     * @return the picture, if there was room for it
     */
    static Optional<ProfilePicture> draw(Canvas canvas, Profile profile, int chosen, int times, Surroundings around) {
        Optional<ProfilePicture> drawn = picture(profile, chosen, times, canvas.rows() - MOST_BRIEF, canvas, around);
        int kept = MOST_BRIEF;
        // What must be said depends on the picture, and its room on what must be said.
        while (drawn.isPresent() && caption(drawn.get(), canvas).size() > kept) {
            kept = caption(drawn.get(), canvas).size();
            drawn = picture(profile, chosen, times, canvas.rows() - kept, canvas, around);
        }
        if (drawn.isEmpty()) {
            canvas.fit(0, 0, canvas.columns(), around.say("profile.no_room"), Style.CAUTION);
            return drawn;
        }
        DrawingView.draw(canvas, drawn.get().drawing(), around.glyphs());
        List<String> caption = caption(drawn.get(), canvas);
        for (int i = 0; i < caption.size(); i++) {
            canvas.put(canvas.rows() - caption.size() + i, 0, caption.get(i), Style.NORMAL);
        }
        return drawn;
    }

    private static Optional<ProfilePicture> picture(
            Profile profile, int chosen, int times, int rows, Canvas canvas, Surroundings around) {
        Room room = new Room(canvas.columns(), rows);
        return Optional.of(room)
                .filter(Room::isEnough)
                .map(enough -> ProfileDrawing.of(
                        profile, profile.around(chosen, times), enough, Optional.of(chosen), words(around)));
    }

    /** In full where it takes no more than its part of the rows, else in brief. */
    private static List<String> caption(ProfilePicture picture, Canvas canvas) {
        List<String> full = Width.wrap(String.join(" ", picture.caption()), canvas.columns());
        if (full.size() <= canvas.rows() / CAPTION_PART) {
            return full;
        }
        List<String> brief = Width.wrap(String.join("; ", picture.brief()), canvas.columns());
        if (brief.size() <= MOST_BRIEF) {
            return brief;
        }
        String last = String.join(" ", brief.subList(MOST_BRIEF - 1, brief.size()));
        return List.of(brief.get(0), Width.cut(last, canvas.columns()));
    }
}
