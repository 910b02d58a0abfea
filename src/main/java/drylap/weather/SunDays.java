package drylap.weather;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.kernel.GeoPoint;
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

/** Days of sun, each reckoned once: the same sites are planned again and again, and a day takes the algorithm 45 µs. */
final class SunDays {
    /** Of a hundred sites for two years; some 20 MB. */
    private static final int MOST = 73_000;

    private record Day(GeoPoint place, ZoneId zone, LocalDate date) {
        Daylight reckon() {
            return reckoned(place, zone, date);
        }
    }

    private static final Cache<Day, Daylight> KNOWN =
            Caffeine.newBuilder().maximumSize(MOST).build();

    private SunDays() {}

    static Daylight of(GeoPoint place, ZoneId zone, LocalDate date) {
        return KNOWN.get(new Day(place, zone, date), Day::reckon);
    }

    private static Daylight reckoned(GeoPoint place, ZoneId zone, LocalDate date) {
        ZonedDateTime midday = date.atTime(LocalTime.NOON).atZone(zone).withZoneSameInstant(localMeanTime(place));
        SunriseResult sun = SPA.calculateSunriseTransitSet(
                midday, place.latitude(), place.longitude(), DeltaT.estimate(midday.toLocalDate()));
        Instant noon = sun.transit().toInstant();
        return switch (sun) {
            case SunriseResult.RegularDay day ->
                new Daylight.RisesAndSets(
                        SunCrossing.settled(
                                place, noon, before(noon, day.sunrise().toInstant())),
                        noon,
                        SunCrossing.settled(
                                place, noon, after(noon, day.sunset().toInstant())));
            case SunriseResult.AllDay _ -> new Daylight.UpAllDay(noon);
            default -> new Daylight.DownAllDay(noon);
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
