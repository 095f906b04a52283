package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.drawing.Drawing;
import thalweg.logbook.CanyonRecord;
import thalweg.profile.Lines;
import thalweg.profile.Profile;
import thalweg.profile.ProfileDrawing;
import thalweg.profile.ProfileWords;
import thalweg.profile.Room;
import thalweg.sheet.SheetPhrases;
import thalweg.testing.GoldenFile;
import thalweg.units.UnitSystem;

/** Profiles as SVG, and how a browser sets their letters. */
class ProfileOnPageTest {

    private static final Room PHONE = new Room(36, 24);

    private static final Room PAPER = new Room(76, 22);

    private static final CanyonRecord CANYON = Lines.of(
            "walk|0 m||Sheepfold bridge",
            "drop|60 m|8 m|Porte|worn",
            "slide|180 m|-",
            "jump|-|5 m|滝|gone",
            "drop|410 m|22 m|Rideau|doubtful",
            "swim|450 m",
            "hazard|520 m||Log jam|unseen",
            "escape|640 m|40 m|Shepherd's <gully>",
            "drop|780 m|46 m|Orgue|sound",
            "drop|1400 m|11 m|Portail|unsafe");

    /** Tells how many texts stand on another or reach out of their picture, and how many there are. */
    private static final String COUNT = """
        <p id="told"></p>
        <script>
        let all = 0, together = 0, outside = 0;
        for (const svg of document.querySelectorAll('svg')) {
          const frame = svg.viewBox.baseVal;
          const boxes = [...svg.querySelectorAll('text')].map(text => text.getBBox());
          all += boxes.length;
          boxes.forEach((one, i) => {
            outside += one.x < frame.x || one.x + one.width > frame.x + frame.width
                || one.y < frame.y || one.y + one.height > frame.y + frame.height ? 1 : 0;
            boxes.slice(0, i).forEach(other => {
              together += one.x < other.x + other.width && other.x < one.x + one.width
                  && one.y + 2 < other.y + other.height && other.y + 2 < one.y + one.height ? 1 : 0;
            });
          });
        }
        document.getElementById('told').textContent = all + ' texts, ' + together + ' met, ' + outside + ' out';
        </script>
        """;

    private static final Pattern TOLD = Pattern.compile("(\\d+) texts, (\\d+) met, (\\d+) out");

    @TempDir
    Path folder;

    private static Drawing drawing(CanyonRecord record, Room room) {
        Profile profile = Profile.of(record);
        ProfileWords words = new ProfileWords(SheetPhrases.ENGLISH, UnitSystem.METRIC);
        return ProfileDrawing.of(profile, profile.whole(), room, Optional.empty(), words)
                .drawing();
    }

    @Test
    void theWideOneLooksAsReviewed() {
        GoldenFile.holds("sheet/profile-wide.svg", SvgDrawing.write(drawing(CANYON, PAPER), "wide", "Profile") + "\n");
    }

    @Test
    void theNarrowOneLooksAsReviewed() {
        GoldenFile.holds(
                "sheet/profile-narrow.svg", SvgDrawing.write(drawing(CANYON, PHONE), "narrow", "Profile") + "\n");
    }

    @Test
    void inABrowserNoLabelStandsOnAnotherOrLeavesThePicture() throws IOException, InterruptedException {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\" /></head><body>");
        for (int seed = 0; seed < 60; seed++) {
            CanyonRecord record = seed == 0 ? CANYON : Lines.random(seed, 1 + seed % 40);
            if (Profile.of(record).canBeDrawn()) {
                page.append(SvgDrawing.write(drawing(record, PHONE), "phone-" + seed, "Profile"));
                page.append(SvgDrawing.write(drawing(record, PAPER), "paper-" + seed, "Profile"));
            }
        }
        Tools tools = new Tools(folder);

        Matcher told = TOLD.matcher(tools.open(tools.page("profiles.html", page + COUNT + "</body></html>")));

        assertThat(told.find()).isTrue();
        assertThat(Integer.parseInt(told.group(1))).isGreaterThan(1000);
        assertThat(told.group(2)).as("labels on another").isEqualTo("0");
        assertThat(told.group(3)).as("labels outside").isEqualTo("0");
    }

    @Test
    void thePhonesLettersAreNotShrunk() {
        Page page = Page.of(SvgDrawing.write(drawing(CANYON, PHONE), "id", "Profile"));
        String[] box = page.elements("svg").get(0).getAttribute("viewBox").split(" ", -1);

        assertThat(Double.parseDouble(box[2])).isLessThanOrEqualTo(328 + 16);
    }
}
