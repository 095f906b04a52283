package thalweg.exchange.gpx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.text.Clean;

/**
 * Reads a file of waypoints, GPX 1.1 or 1.0. Whatever breaks a rule is a finding with its line, and nothing is taken from
 * the file then. What other programs add is passed over.
 *
 * <p>Not kept: bounds, links, how a position was got (fix, satellites, dilution), and the points of tracks, which are only
 * counted. An elevation is kept as it stands, but never becomes the height of a drop.
 *
 * @see "GPX 1.1 Schema"
 */
public final class GpxReader {

    /** Who has so many to mend looks into the program that wrote the file. */
    static final int MOST_FINDINGS = 200;

    private final Elements in;
    private final Findings findings;
    private final List<Waypoint> waypoints = new ArrayList<>();
    private final List<Sentence> remarks = new ArrayList<>();
    private int points;
    private int trackPoints;

    private GpxReader(Elements in, Findings findings) {
        this.in = in;
        this.findings = findings;
    }

    /** Whether the bytes can be such a file: they begin as XML does. */
    public static boolean looksLikeOne(byte[] bytes) {
        return XmlBytes.looksLikeXml(bytes);
    }

    /** What the file holds, or {@link GpxFile#EMPTY} where there are findings. */
    public static GpxFile read(byte[] bytes, Findings findings) {
        Optional<String> text = XmlBytes.text(bytes, findings);
        if (text.isEmpty()) {
            return GpxFile.EMPTY;
        }
        GpxFile file = GpxFile.EMPTY;
        try {
            Elements in = new Elements(text.get(), findings);
            file = new GpxReader(in, findings).file();
        } catch (XMLStreamException e) {
            Elements.note(e, text.get(), findings);
        }
        return findings.none() ? file : GpxFile.EMPTY;
    }

    private GpxFile file() throws XMLStreamException {
        in.root();
        String version = in.attribute("version").orElse("").strip();
        if (!in.name().equals("gpx")) {
            throw stop(Sentence.of(
                    "the file begins with <{0}>, so it is no GPX file; export waypoints as GPX.",
                    Clean.line(in.name(), 40)));
        }
        if (!version.isEmpty() && !version.equals("1.1") && !version.equals("1.0")) {
            throw stop(Sentence.of(
                    "the file says that it is GPX {0}; 1.1 and 1.0 are known. Export it as one of them.",
                    Clean.line(version, 20)));
        }
        while (in.child()) {
            switch (ownName()) {
                case "wpt" -> point(Waypoint.Origin.WAYPOINT);
                case "rte" -> route();
                case "trk" -> track();
                default -> in.skip();
            }
        }
        in.finish();
        if (trackPoints > 0) {
            remarks.add(
                    trackPoints == 1
                            ? Sentence.of("The file has 1 point of tracks; the way that a device went is not taken.")
                            : Sentence.of(
                                    "The file has {0} points of tracks; the way that a device went is not taken.",
                                    trackPoints));
        }
        return new GpxFile(waypoints, trackPoints, remarks);
    }

    /** Empty text for what a program added. */
    private String ownName() {
        return in.isOwn() ? in.name() : "";
    }

    private void route() throws XMLStreamException {
        while (in.child()) {
            if (ownName().equals("rtept")) {
                point(Waypoint.Origin.ROUTE_POINT);
            } else {
                in.skip();
            }
        }
    }

    private void track() throws XMLStreamException {
        while (in.child()) {
            if (ownName().equals("trkseg")) {
                while (in.child()) {
                    trackPoints += ownName().equals("trkpt") ? 1 : 0;
                    in.skip();
                }
            } else {
                in.skip();
            }
        }
    }

    private void point(Waypoint.Origin origin) throws XMLStreamException {
        points++;
        if (points > GpxFile.MOST_WAYPOINTS) {
            throw stop(Sentence.of(
                    "there are more than {0} waypoints; export only those of the canyon.", GpxFile.MOST_WAYPOINTS));
        }
        if (findings.count() >= MOST_FINDINGS) {
            throw stop(Sentence.of("there is so much wrong that reading ended here."));
        }
        new PointReader(in, findings, remarks).point(origin).ifPresent(waypoints::add);
    }

    private Elements.Ended stop(Sentence what) {
        findings.add("", in.line(), what);
        return new Elements.Ended();
    }
}
