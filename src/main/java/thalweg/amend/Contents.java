package thalweg.amend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.text.Phrases;

/**
 * How much is in a thing, and would go with it.
 *
 * @param places on the line, 0 or more
 * @param stations 0 or more
 * @param anchors 0 or more
 * @param parts 0 or more
 */
public record Contents(int places, int stations, int anchors, int parts) {

    /** Nothing. */
    public static final Contents NOTHING = new Contents(0, 0, 0, 0);

    /** What is in a canyon. */
    public static Contents of(CanyonRecord canyon) {
        return inLine(canyon.line());
    }

    /** What is at a place on the line. */
    public static Contents of(LineRecord place) {
        Contents line = inLine(List.of(place));
        return new Contents(0, line.stations, line.anchors, line.parts);
    }

    /** What is at a station. */
    public static Contents of(StationRecord station) {
        return new Contents(0, 0, station.anchors().size(), station.parts().size());
    }

    /** What is at an anchor. */
    public static Contents of(AnchorRecord anchor) {
        return new Contents(0, 0, 0, anchor.parts().size());
    }

    private static Contents inLine(Collection<LineRecord> line) {
        List<StationRecord> stations =
                line.stream().flatMap(place -> place.stations().stream()).toList();
        return new Contents(
                line.size(),
                stations.size(),
                stations.stream().mapToInt(station -> station.anchors().size()).sum(),
                stations.stream().mapToInt(station -> station.parts().size()).sum());
    }

    /** Whether there is nothing. */
    public boolean isEmpty() {
        return equals(NOTHING);
    }

    /** "2 stations, 3 anchors and 7 parts"; empty text where there is nothing. */
    public String print(Phrases phrases) {
        List<String> counts = new ArrayList<>();
        count(counts, phrases, "place", places);
        count(counts, phrases, "station", stations);
        count(counts, phrases, "anchor", anchors);
        count(counts, phrases, "part", parts);
        if (counts.size() < 2) {
            return String.join("", counts);
        }
        String last = counts.remove(counts.size() - 1);
        return phrases.say("contents.and", String.join(", ", counts), last);
    }

    private static void count(List<String> counts, Phrases phrases, String key, int number) {
        if (number > 0) {
            counts.add(phrases.count("contents." + key, number));
        }
    }
}
