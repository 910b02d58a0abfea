package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.GeoPoint;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.time.temporal.JulianFields;
import net.e175.klaus.solarpositioning.SPA;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shredzone.commons.suncalc.SunTimes;

class DaylightTests {
    private static final GeoPoint GOLDEN = new GeoPoint(39.742476, -105.1786);
    private static final ZoneOffset MOUNTAIN = ZoneOffset.ofHours(-7);
    private static final GeoPoint TROMSO = new GeoPoint(69.6492, 18.9553);
    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final GeoPoint REYKJAVIK = new GeoPoint(64.1466, -21.9426);

    /** Source: NREL/TP-560-34302, the worked example; its sunset belongs to the evening before in local time. */
    @Test
    void the_published_example_rises_on_its_day_and_sets_on_the_evening_before() {
        assertThat(sun(GOLDEN, MOUNTAIN, "2003-10-17").sunrise())
                .isCloseTo(at("2003-10-17T06:12:43", MOUNTAIN), within(2, ChronoUnit.SECONDS));
        assertThat(sun(GOLDEN, MOUNTAIN, "2003-10-16").sunset())
                .isCloseTo(at("2003-10-16T17:20:19", MOUNTAIN), within(2, ChronoUnit.SECONDS));
    }

    /** Source: computed with a NOAA/Meeus program apart from this library; not the 17:20:19 that the report prints. */
    @Test
    void the_published_example_sets_earlier_on_its_own_evening() {
        var sun = sun(GOLDEN, MOUNTAIN, "2003-10-17");
        assertThat(sun.sunset()).isCloseTo(at("2003-10-17T17:18:52", MOUNTAIN), within(2, ChronoUnit.SECONDS));
        assertThat(sun.noon()).isCloseTo(at("2003-10-17T11:46:05", MOUNTAIN), within(2, ChronoUnit.SECONDS));
    }

    /** Source: NREL/TP-560-34302, Julian day, zenith and azimuth of the worked example. */
    @Test
    void the_library_gives_the_published_position() {
        var instant = LocalDateTime.parse("2003-10-17T12:30:30").atZone(MOUNTAIN);
        var utc = instant.withZoneSameInstant(ZoneOffset.UTC);
        double fromNoon = utc.toLocalTime().toSecondOfDay() / 86_400.0 - 0.5;
        assertThat(utc.getLong(JulianFields.JULIAN_DAY) + fromNoon).isCloseTo(2452930.312847, within(1e-6));
        var sun = SPA.calculateSolarPosition(instant, GOLDEN.latitude(), GOLDEN.longitude(), 1830.14, 67, 820, 11);
        assertThat(sun.zenithAngle()).isCloseTo(50.111622, within(1e-5));
        assertThat(sun.azimuth()).isCloseTo(194.340241, within(1e-5));
    }

    /** Sources: computed with the SPA library for a plain zone offset, and commons-suncalc, which is up to 30 s off it. */
    @ParameterizedTest
    @CsvSource({
        "47.6062, -122.3321, America/Los_Angeles, 2024-12-21, 07:55:02, 12:07:47, 16:20:33",
        "40.7128, -74.0060,  America/New_York,    2024-06-20, 05:24:54, 12:57:46, 20:30:39",
        "51.4778, 0,         Europe/London,       2024-03-20, 06:01:47, 12:07:18, 18:13:50",
        "64.1466, -21.9426,  Atlantic/Reykjavik,  2024-12-21, 11:22:34, 13:26:05, 15:29:37"
    })
    void sunrise_noon_and_sunset_of_known_days(
            double latitude, double longitude, ZoneId zone, LocalDate date, String rise, String noon, String set) {
        var place = new GeoPoint(latitude, longitude);
        var sun = sun(place, zone, date.toString());
        assertThat(sun.sunrise()).isCloseTo(at(date + "T" + rise, zone), within(20, ChronoUnit.SECONDS));
        assertThat(sun.noon()).isCloseTo(at(date + "T" + noon, zone), within(20, ChronoUnit.SECONDS));
        assertThat(sun.sunset()).isCloseTo(at(date + "T" + set, zone), within(20, ChronoUnit.SECONDS));
        var other = second(place, date.atStartOfDay(zone).toInstant());
        assertThat(sun.sunrise()).isCloseTo(other.getRise().toInstant(), within(40, ChronoUnit.SECONDS));
        assertThat(sun.sunset()).isCloseTo(other.getSet().toInstant(), within(40, ChronoUnit.SECONDS));
    }

    /** Source: commons-suncalc finds the sun up for 24 h from local midnight on. */
    @Test
    void the_midnight_sun_has_neither_sunrise_nor_sunset() {
        assertThat(Daylight.of(TROMSO, OSLO, LocalDate.parse("2024-06-21"))).isInstanceOf(Daylight.UpAllDay.class);
        assertThat(second(TROMSO, at("2024-06-21T00:00:00", OSLO)).isAlwaysUp()).isTrue();
    }

    /** Source: commons-suncalc, as above. */
    @Test
    void the_polar_night_has_neither_sunrise_nor_sunset() {
        assertThat(Daylight.of(TROMSO, OSLO, LocalDate.parse("2024-12-21"))).isInstanceOf(Daylight.DownAllDay.class);
        assertThat(second(TROMSO, at("2024-12-21T00:00:00", OSLO)).isAlwaysDown())
                .isTrue();
    }

    /** Source: commons-suncalc from noon on; its sunset comes after midnight, where a search within the date misses it. */
    @Test
    void a_sunset_after_midnight_belongs_to_the_day_before() {
        var sun = sun(REYKJAVIK, ZoneOffset.UTC, "2024-06-21");
        assertThat(sun.sunset()).isAfter(Instant.parse("2024-06-22T00:00:00Z"));
        var other = second(REYKJAVIK, Instant.parse("2024-06-21T12:00:00Z"));
        assertThat(sun.sunset()).isCloseTo(other.getSet().toInstant(), within(60, ChronoUnit.SECONDS));
    }

    /** No source needed: a zone far from local mean time still gets the day that its own noon lies in. */
    @Test
    void the_line_islands_date_their_sunrise_by_their_own_calendar() {
        var zone = ZoneId.of("Pacific/Kiritimati");
        var sun = sun(new GeoPoint(1.87, -157.43), zone, "2026-04-13");
        assertThat(sun.sunrise().atZone(zone).toLocalDate()).isEqualTo("2026-04-13");
        assertThat(sun.sunset().atZone(zone).toLocalDate()).isEqualTo("2026-04-13");
    }

    @Test
    void near_the_midnight_sun_each_sunrise_still_comes_before_its_noon_and_each_sunset_after() {
        for (var date = LocalDate.parse("2024-05-01"); date.getMonthValue() < 9; date = date.plusDays(1))
            if (Daylight.of(TROMSO, OSLO, date) instanceof Daylight.RisesAndSets day) {
                assertThat(day.sunrise())
                        .isBefore(day.noon())
                        .isAfter(day.noon().minus(Duration.ofHours(13)));
                assertThat(day.sunset()).isAfter(day.noon()).isBefore(day.noon().plus(Duration.ofHours(13)));
            }
    }

    private static Daylight.RisesAndSets sun(GeoPoint place, ZoneId zone, String date) {
        return (Daylight.RisesAndSets) Daylight.of(place, zone, LocalDate.parse(date));
    }

    private static SunTimes second(GeoPoint place, Instant from) {
        return SunTimes.compute()
                .at(place.latitude(), place.longitude())
                .on(from)
                .timezone("UTC")
                .oneDay()
                .execute();
    }

    private static Instant at(String local, ZoneId zone) {
        return LocalDateTime.parse(local).atZone(zone).toInstant();
    }
}
