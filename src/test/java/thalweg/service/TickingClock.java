package thalweg.service;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock on which every look is a second later than the one before. */
final class TickingClock extends Clock {

    private Instant now = Instant.parse("2026-11-25T06:00:00Z");

    @Override
    public Instant instant() {
        now = now.plusSeconds(1);
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("the tests live in one zone");
    }
}
