package drylap.weather;

import drylap.kernel.GeoPoint;
import drylap.sites.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** The sun of one date at one place, by NREL's Solar Position Algorithm at the standard zenith of 90.833°. */
public sealed interface Daylight {
    /** When the sun is highest. */
    Instant noon();

    record RisesAndSets(Instant sunrise, Instant noon, Instant sunset) implements Daylight {}

    record UpAllDay(Instant noon) implements Daylight {}

    record DownAllDay(Instant noon) implements Daylight {}

    static Daylight of(Site site, LocalDate date) {
        return of(site.place(), site.zone(), date);
    }

    /** The sunrise and sunset around the solar noon of that date, even where the sun sets after the zone's midnight. */
    static Daylight of(GeoPoint place, ZoneId zone, LocalDate date) {
        return SunDays.of(place, zone, date);
    }
}
