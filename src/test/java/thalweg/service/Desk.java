package thalweg.service;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.StationRecord;

/** A session in memory with one small canyon, on 25 November 2026 unless another clock is given. */
final class Desk implements AutoCloseable {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private static final String RECORDS = """
        {"format": "thalweg records", "version": 1, "canyons": [
          {"name": "Probe", "invented": true, "line": [
            {"kind": "drop", "height_cm": 1800, "stations": [
              {"name": "first", "anchors": [{"role": "main", "parts": [
                {"label": "left bolt", "kind": "bolt", "inspections": [{"on": "2024-05-01", "found": "sound"}]},
                {"label": "right bolt", "kind": "bolt"}]}]}]}]}]}
        """;

    private final Session session;

    Desk() {
        this(CLOCK);
    }

    Desk(Clock clock) {
        session = Session.inMemory(clock, "ada");
        fill(session);
    }

    /** Takes the canyon into another session. */
    static void fill(Session session) {
        ImportRecords records = new ImportRecords(session);
        records.accept(records.preview("probe", RECORDS.getBytes(StandardCharsets.UTF_8))
                .plan());
    }

    Session session() {
        return session;
    }

    CanyonRecord canyon() {
        return new FindRecord(session).canyon("Probe");
    }

    StationRecord station() {
        return canyon().stations().get(0);
    }

    @Override
    public void close() {
        session.close();
    }
}
