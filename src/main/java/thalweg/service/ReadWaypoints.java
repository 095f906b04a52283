package thalweg.service;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import thalweg.exchange.geojson.GeoJsonReader;
import thalweg.exchange.gpx.GpxFile;
import thalweg.exchange.gpx.GpxReader;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;

/** Reads a file of waypoints. Nothing is written: where each belongs, a person decides. */
public final class ReadWaypoints {

    /** Bytes in which a file says what it is. */
    private static final int BEGINNING = 4_096;

    private ReadWaypoints() {}

    /**
     * What is in a file, or what is wrong with it.
     *
     * @param name of the file, as it was named
     * @param findings one line each; then nothing is taken from it
     * @param file what it holds, nothing where there are findings
     */
    public record Answer(String name, List<Sentence> findings, GpxFile file) {
        public Answer {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Reads a file that was named in a field.
     *
     * @param typed its path; a tilde at its beginning is the home folder
     * @throws InputException when it cannot be read
     */
    public static Answer typed(String typed) {
        Path path = ReadFile.typed(typed, System.getenv());
        return of(path.toString(), ReadFile.bytes(path));
    }

    /** The same for bytes that are at hand. */
    public static Answer of(String name, byte[] bytes) {
        Findings findings = new Findings();
        GpxFile file = GpxReader.looksLikeOne(bytes)
                ? GpxReader.read(bytes, findings)
                : GeoJsonReader.read(JsonDocument.read(name, bytes), findings);
        return new Answer(name, findings.all().stream().map(Finding::saying).toList(), file);
    }

    /** Whether a file of those bytes is one of waypoints, whatever its name: it begins as XML does, or says that it is GeoJSON. */
    public static boolean looksLikeOne(byte[] bytes) {
        return GpxReader.looksLikeOne(bytes) || isGeoJson(bytes);
    }

    /** A file of records says in its beginning what it is, and may have any word in its notes. */
    private static boolean isGeoJson(byte[] bytes) {
        String beginning =
                new String(bytes, 0, Math.min(bytes.length, BEGINNING), StandardCharsets.UTF_8).replaceAll("\\s", "");
        if (beginning.contains("\"thalwegrecords\"")) {
            return false;
        }
        return beginning.contains("\"type\":\"FeatureCollection\"") || beginning.contains("\"type\":\"Feature\"");
    }
}
