package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.drawing.Drawing;
import thalweg.logbook.CanyonRecord;
import thalweg.profile.Profile;
import thalweg.profile.ProfileDrawing;
import thalweg.profile.ProfileLines;
import thalweg.profile.ProfileWords;
import thalweg.profile.Room;

/** The line as it goes down: a picture as wide as a phone and one as wide as paper, and the same in plain text. */
final class ProfilePart {

    private static final Room PHONE = new Room(36, 24);
    private static final Room PAPER = new Room(76, 22);

    private final Wording wording;

    ProfilePart(Wording wording) {
        this.wording = wording;
    }

    /** Nothing for an empty line; a sentence where there is nothing to draw to scale. */
    Optional<Section> of(CanyonRecord record) {
        Profile profile = Profile.of(record);
        if (profile.size() == 0) {
            return Optional.empty();
        }
        ProfileWords words = wording.profile();
        Block block = profile.canBeDrawn()
                ? new Block.Picture(
                        "profile-picture",
                        wording.say("sheet.profile.caption"),
                        drawing(profile, PHONE, words),
                        Optional.of(drawing(profile, PAPER, words)),
                        ProfileLines.of(profile, words))
                : new Block.Paragraph(Words.of(words.refusal(profile), Tone.UNKNOWN));
        return Optional.of(Section.of("profile", wording.say("sheet.profile"), List.of(block)));
    }

    private static Drawing drawing(Profile profile, Room room, ProfileWords words) {
        return ProfileDrawing.of(profile, profile.whole(), room, Optional.empty(), words)
                .drawing();
    }
}
