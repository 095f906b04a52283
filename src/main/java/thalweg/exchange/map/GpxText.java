package thalweg.exchange.map;

import java.io.StringWriter;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/**
 * Canyons as GPX 1.1: a waypoint for the canyon and each place and station of which the coordinates are known, and a route
 * down each line of which two places or more are. Elements stand in the order of the schema, which requires it.
 *
 * @see "GPX 1.1 Schema, gpxType, metadataType, wptType, rteType"
 */
public final class GpxText {

    private static final String NAMESPACE = "http://www.topografix.com/GPX/1/1";

    private final XMLStreamWriter out;
    private final MapWords words;

    private GpxText(XMLStreamWriter out, MapWords words) {
        this.out = out;
        this.words = words;
    }

    /**
     * Writes them.
     *
     * @param at when it is written
     */
    public static String write(List<CanyonRecord> canyons, Phrases phrases, UnitSystem units, Instant at) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            new GpxText(out, new MapWords(phrases, units)).file(canyons, at);
            out.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("text in memory cannot be written", e);
        }
        return text.toString();
    }

    private void file(List<CanyonRecord> canyons, Instant at) throws XMLStreamException {
        out.writeStartDocument("UTF-8", "1.0");
        line("\n");
        out.writeStartElement("gpx");
        out.writeDefaultNamespace(NAMESPACE);
        out.writeAttribute("version", "1.1");
        out.writeAttribute("creator", "Thalweg");
        line("\n  ");
        out.writeStartElement("metadata");
        child(
                "desc",
                words.caution(canyons.stream().anyMatch(one -> one.canyon().invented())));
        child("time", at.truncatedTo(ChronoUnit.SECONDS).toString());
        out.writeEndElement();
        for (CanyonRecord canyon : canyons) {
            waypoints(canyon);
        }
        for (CanyonRecord canyon : canyons) {
            route(canyon);
        }
        line("\n");
        out.writeEndElement();
        line("\n");
        out.writeEndDocument();
    }

    private void waypoints(CanyonRecord canyon) throws XMLStreamException {
        String name = canyon.canyon().name();
        if (canyon.canyon().position().isPresent()) {
            point(
                    "wpt",
                    canyon.canyon().position().get(),
                    name,
                    words.caution(canyon.canyon().invented()),
                    "canyon");
        }
        for (LineRecord place : canyon.line()) {
            if (place.obstacle().position().isPresent()) {
                point(
                        "wpt",
                        place.obstacle().position().get(),
                        words.place(place),
                        name,
                        MapWords.word(place.obstacle().kind()));
            }
            for (StationRecord station : place.stations()) {
                if (station.station().position().isPresent()) {
                    point(
                            "wpt",
                            station.station().position().get(),
                            words.station(place, station),
                            name + ": " + words.about(place, station),
                            "station");
                }
            }
        }
    }

    private void route(CanyonRecord canyon) throws XMLStreamException {
        List<Located.Stop> way = Located.way(canyon);
        if (way.size() < 2) {
            return;
        }
        line("\n  ");
        out.writeStartElement("rte");
        child("name", canyon.canyon().name());
        for (Located.Stop point : way) {
            line("\n  ");
            point("rtept", point.position(), words.place(point.place()), "", "");
        }
        line("\n  ");
        out.writeEndElement();
    }

    /** The order is name, comment, description, type. Accuracy has no element of its own; "hdop" would be something else. */
    private void point(String element, Position position, String name, String about, String type)
            throws XMLStreamException {
        line("\n  ");
        out.writeStartElement(element);
        out.writeAttribute("lat", position.printLatitude());
        out.writeAttribute("lon", position.printLongitude());
        child("name", name);
        if (position.accuracyMetres().isPresent()) {
            child("cmt", "\u00B1 " + position.accuracyMetres().get() + " m");
        }
        if (!about.isEmpty()) {
            child("desc", about);
        }
        if (!type.isEmpty()) {
            child("type", type);
        }
        line("\n  ");
        out.writeEndElement();
    }

    private void child(String element, String text) throws XMLStreamException {
        line("\n    ");
        out.writeStartElement(element);
        out.writeCharacters(harmless(text));
        out.writeEndElement();
    }

    /** What XML cannot hold even escaped becomes the sign for that. Source: XML 1.0, production 2, Char. */
    private static String harmless(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().map(GpxText::allowed).forEach(out::appendCodePoint);
        return out.toString();
    }

    private static int allowed(int c) {
        boolean holds = c == '\t' || c == '\n' || (c >= 0x20 && c < 0xD800) || (c > 0xDFFF && c < 0xFFFE) || c > 0xFFFF;
        return holds ? c : 0xFFFD;
    }

    private void line(String space) throws XMLStreamException {
        out.writeCharacters(space);
    }
}
