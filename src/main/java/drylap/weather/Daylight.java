package drylap.weather;

import drylap.kernel.GeoPoint;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;

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
        ZonedDateTime midday = date.atTime(LocalTime.NOON).atZone(zone).withZoneSameInstant(localMeanTime(place));
        SunriseResult sun = SPA.calculateSunriseTransitSet(
                midday, place.latitude(), place.longitude(), DeltaT.estimate(midday.toLocalDate()));
        Instant noon = sun.transit().toInstant();
        return switch (sun) {
            case SunriseResult.RegularDay day ->
                new RisesAndSets(
                        before(noon, day.sunrise().toInstant()),
                        noon,
                        after(noon, day.sunset().toInstant()));
            case SunriseResult.AllDay _ -> new UpAllDay(noon);
            default -> new DownAllDay(noon);
        };
    }

    /** The algorithm answers within one day of the zone that it is given: in local mean time noon is in the middle of it. */
    private static ZoneOffset localMeanTime(GeoPoint place) {
        return ZoneOffset.ofTotalSeconds(Math.toIntExact(
                Math.round(place.longitude() / 360 * Duration.ofDays(1).toSeconds())));
    }

    private static Instant before(Instant noon, Instant sunrise) {
        return sunrise.isAfter(noon) ? sunrise.minus(Duration.ofDays(1)) : sunrise;
    }

    private static Instant after(Instant noon, Instant sunset) {
        return sunset.isBefore(noon) ? sunset.plus(Duration.ofDays(1)) : sunset;
    }
}
