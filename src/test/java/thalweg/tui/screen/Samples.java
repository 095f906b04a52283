package thalweg.tui.screen;

import java.nio.charset.StandardCharsets;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsWriter;
import thalweg.logbook.CanyonRecord;
import thalweg.testing.SampleRecords;

/**
 * The two canyons of the sample data that are fully known, so that walks and pictures stay when more are added; a walk
 * enters the rounds that it needs.
 */
final class Samples {

    private static final byte[] FULLY_KNOWN = RecordsWriter.write(SampleRecords.FULLY_KNOWN.stream()
                    .map(record -> Parcel.of(new CanyonRecord(record.canyon(), record.line())))
                    .toList())
            .getBytes(StandardCharsets.UTF_8);

    private Samples() {}

    static byte[] bytes() {
        return FULLY_KNOWN.clone();
    }

    /** All of them. */
    static byte[] all() {
        return SampleRecords.bytes();
    }
}
