package thalweg.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.shredzone.commons.suncalc.SunTimes;
import thalweg.place.Position;

/**
 * When the sun rises and sets over a flat horizon at sea level. In a canyon it is gone long before; nobody has entered the
 * walls.
 *
 * @param rise empty on a day on which it does not rise
 * @param set empty on a day on which it does not set
 */
public record Daylight(Optional<ZonedDateTime> rise, Optional<ZonedDateTime> set) {

    /** On a day at a place, in the time of a zone. */
    public static Daylight of(Position at, LocalDate day, ZoneId zone) {
        SunTimes times = SunTimes.compute()
                .at((double) at.latE7() / Position.PER_DEGREE, (double) at.lonE7() / Position.PER_DEGREE)
                .on(day.atStartOfDay(zone))
                .oneDay()
                .execute();
        return new Daylight(Optional.ofNullable(times.getRise()), Optional.ofNullable(times.getSet()));
    }
}
