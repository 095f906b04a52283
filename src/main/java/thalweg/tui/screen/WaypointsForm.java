package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.exchange.gpx.GpxFile;
import thalweg.logbook.CanyonRecord;
import thalweg.placing.Placing;
import thalweg.route.Canyon;
import thalweg.route.Prose;
import thalweg.route.Times;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * A file of waypoints to name, and the name of the canyon where that is new. It leads to the placing, or to what is wrong
 * with the file, from where a person comes back to name another.
 *
 * @param go onto which canyon
 */
record WaypointsForm(Go.ReadWaypoints go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return go.canyon()
                .map(record -> around.say("waypoints_form.onto", record.canyon().name()))
                .orElseGet(() -> around.say("waypoints_form.new"));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(new DraftKey(
                DraftKind.WAYPOINTS,
                true,
                go.canyon().map(record -> record.canyon().uid())));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around);
        if (go.canyon().isEmpty()) {
            build.name("name", "form.canyon.name", "");
        }
        build.labelled("file", around.say("waypoints_form.file"), around.say("help.waypoints_form.file"));
        return Form.of(build.done());
    }

    @Override
    public String send(Surroundings around) {
        return around.say("key.read_file");
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return filled.text("file").isEmpty() ? around.say("waypoints_form.no_file") : "";
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.ReadWaypoints(filled.text("file"));
    }

    @Override
    public Optional<Onward> onward(Told answer, Filled sent, Surroundings around) {
        if (!(answer instanceof Told.WaypointsRead read)) {
            return Optional.empty();
        }
        if (!read.findings().isEmpty() || read.file().waypoints().isEmpty()) {
            return Optional.of(new Onward(new Go.Read(read.name(), nothingTaken(read, around)), false));
        }
        CanyonRecord canyon = go.canyon().orElseGet(() -> new CanyonRecord(named(sent.text("name")), List.of()));
        Placing start = Placing.start(canyon, go.canyon().isEmpty(), read.file().waypoints());
        return Optional.of(new Onward(
                new Go.PlaceWaypoints(start, fileName(read.name()), read.file().remarks()), true));
    }

    /** Without its folders, for which a title has no room. */
    private static String fileName(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private static List<Paragraph> nothingTaken(Told.WaypointsRead read, Surroundings around) {
        GpxFile file = read.file();
        List<Paragraph> text = new ArrayList<>();
        boolean broken = !read.findings().isEmpty();
        text.add(Paragraph.of(
                broken
                        ? around.say("waypoints_form.broken", read.findings().size())
                        : around.say("waypoints_form.empty"),
                broken ? Style.ERROR : Style.STRONG));
        text.add(Paragraph.gap());
        read.findings()
                .forEach(finding -> text.add(Paragraph.of(around.phrases().say(finding))));
        file.remarks().forEach(remark -> text.add(Paragraph.of(around.phrases().say(remark))));
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say("waypoints_form.again"), Style.FAINT));
        return text;
    }

    private Canyon named(String name) {
        return new Canyon(
                go.spare(),
                name,
                List.of(),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.empty(),
                Prose.none(),
                false);
    }
}
