package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import thalweg.exchange.gpx.GpxFile;
import thalweg.exchange.gpx.Waypoint;
import thalweg.fault.Sentence;
import thalweg.text.Phrases;
import thalweg.text.Width;
import thalweg.units.UnitSystem;

/** What is in a file of waypoints, in words. */
final class WaypointReport {

    /** The way from here to a canyon's line. */
    static final Sentence HOW = Sentence.of(
            "Waypoints are placed by a person, in the screen: start `thalweg`, then g on the list of canyons"
                    + " for a new canyon, or g on a canyon for its line.");

    /** Cells of a note; the whole of it is in the screen. */
    private static final int LONGEST_NOTE = 60;

    private WaypointReport() {}

    static String of(GpxFile file, UnitSystem units, Phrases phrases) {
        StringBuilder out = new StringBuilder();
        int routed = file.count(Waypoint.Origin.ROUTE_POINT);
        out.append(counted(file.waypoints().size(), "waypoint"))
                .append(routed == 0 ? "" : ", " + routed + " of them on routes")
                .append(".\n");
        if (!file.waypoints().isEmpty()) {
            List<List<String>> rows = new ArrayList<>();
            rows.add(List.of("LINE", "NAME", "ELEVATION", "COORDINATES", "NOTE"));
            file.waypoints().forEach(waypoint -> rows.add(row(waypoint, units)));
            out.append(Columns.of(rows));
        }
        file.remarks().forEach(remark -> out.append(phrases.say(remark)).append('\n'));
        out.append(phrases.say(
                        Sentence.of("Elevations are as the file has them; no height of a drop is taken from them.")))
                .append('\n');
        return out.append(phrases.say(HOW)).append('\n').toString();
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static List<String> row(Waypoint waypoint, UnitSystem units) {
        return List.of(
                Integer.toString(waypoint.line()),
                waypoint.name(),
                waypoint.elevation().map(height -> height.print(units)).orElse("unknown"),
                waypoint.position().printDecimal(),
                Width.cut(waypoint.note().replace("\n", "; "), LONGEST_NOTE));
    }
}
