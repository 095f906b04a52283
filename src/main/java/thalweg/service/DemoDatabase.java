package thalweg.service;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;

/** Makes the user's copy of the sample data, through the same import that any file goes through. */
public final class DemoDatabase {

    private static final String SAMPLE = "/thalweg/sample-data/records.json";

    /** Nothing in the sample data is later. */
    private static final Instant STORY_ENDS = Instant.parse("2026-11-25T12:00:00Z");

    private DemoDatabase() {}

    /**
     * Makes the copy, unless it is there.
     *
     * @param anew whether a copy that is there is replaced by a fresh one
     * @throws StoreException when it cannot be made
     */
    public static void prepare(Folders folders, Clock clock, String user, boolean anew) {
        Path demo = folders.demo();
        if (Files.exists(demo) && !anew) {
            return;
        }
        Folders.make(folders.data());
        Path aside = demo.resolveSibling(demo.getFileName() + ".new");
        try {
            Files.deleteIfExists(aside);
            try (Session session = Session.creating(aside, notBefore(clock), user)) {
                ImportRecords records = new ImportRecords(session);
                ImportRecords.Preview preview = records.preview("The sample data", sample());
                if (!preview.findings().isEmpty()) {
                    throw new AssertionError("the sample data is sound, but: " + preview.findings());
                }
                records.accept(preview.plan());
                session.ledger().forgetChanges();
            }
            Files.move(aside, demo, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of("The demo database {0} cannot be made; check that its folder may be written.", demo),
                    e);
        }
    }

    /** On a machine whose clock is behind, the sample's inspections would lie in the future and be refused. */
    private static Clock notBefore(Clock clock) {
        return clock.instant().isBefore(STORY_ENDS) ? Clock.fixed(STORY_ENDS, clock.getZone()) : clock;
    }

    private static byte[] sample() {
        try (InputStream in = DemoDatabase.class.getResourceAsStream(SAMPLE)) {
            if (in == null) {
                throw new AssertionError("the sample data is part of the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read", e);
        }
    }
}
