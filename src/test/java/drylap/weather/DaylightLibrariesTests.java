package drylap.weather;

import static java.lang.Math.abs;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.GeoPoint;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import net.time4j.Moment;
import net.time4j.PlainDate;
import net.time4j.TemporalType;
import net.time4j.calendar.astro.SolarTime;
import net.time4j.calendar.astro.StdSolarCalculator;
import org.junit.jupiter.api.Test;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Sunrise and sunset against two libraries that share nothing with ours or with each other, commons-suncalc (Montenbruck and
 * Pfleger) and Time4J (Meeus by its own code), at 1,000 random places from pole to pole on random dates.
 */
class DaylightLibrariesTests {
    private static final int CASES = 1000;
    private static final double MOST_S = 60;
    /** Where the sun crosses the horizon slower than this in a minute, so much of an angle is let pass for the minute. */
    private static final double SLOW_DEG = 0.02;

    private static final double HORIZON_DEG = -0.833;
    private static final Duration HALF_A_DAY = Duration.ofHours(12);

    private record Case(GeoPoint place, LocalDate date, Daylight ours) {
        /** The sun's height at its highest (1) and lowest (-1) of the day: how near it comes to staying up or down. */
        boolean grazes() {
            double declination = MeeusSun.at(ours.noon()).declination();
            double highest = 90 - abs(place.latitude() - declination);
            double lowest = abs(place.latitude() + declination) - 90;
            // the declination moves by up to 0.4° a day
            return abs(highest - HORIZON_DEG) < 0.4 || abs(lowest - HORIZON_DEG) < 0.4;
        }

        /** Seconds that the allowed angle takes the sun where it crosses the horizon. */
        double allowed(Instant crossing) {
            double declination = toRadians(MeeusSun.at(crossing).declination());
            double hourAngle = toRadians(Duration.between(ours.noon(), crossing).toMillis() / 86_400_000.0 * 360);
            double degreesASecond =
                    abs(cos(toRadians(place.latitude())) * cos(declination) * sin(hourAngle) * 15 / 3600);
            return Math.max(MOST_S, SLOW_DEG / degreesASecond);
        }
    }

    private final List<Case> cases = cases();

    @Test
    void commons_suncalc_agrees() {
        assertThat(differences(DaylightLibrariesTests::risesBySuncalc, DaylightLibrariesTests::setsBySuncalc))
                .isEmpty();
    }

    @Test
    void time4j_agrees() {
        assertThat(differences(DaylightLibrariesTests::risesByTime4j, DaylightLibrariesTests::setsByTime4j))
                .isEmpty();
    }

    /** Else the two above would compare nothing of the polar day and night, or allow too much. */
    @Test
    void the_cases_hold_polar_days_and_nights_and_few_that_graze() {
        assertThat(cases)
                .filteredOn(one -> one.ours() instanceof Daylight.UpAllDay)
                .hasSizeGreaterThan(40);
        assertThat(cases)
                .filteredOn(one -> one.ours() instanceof Daylight.DownAllDay)
                .hasSizeGreaterThan(40);
        assertThat(cases).filteredOn(Case::grazes).hasSizeLessThan(30);
        assertThat(cases)
                .filteredOn(
                        one -> one.ours() instanceof Daylight.RisesAndSets day && one.allowed(day.sunset()) > MOST_S)
                .hasSizeLessThan(30);
    }

    private static List<Case> cases() {
        var random = new SplittableRandom(20260413);
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < CASES; i++) {
            var place = new GeoPoint(random.nextDouble(-89, 89), random.nextDouble(-180, 180));
            LocalDate date = LocalDate.of(2020, 1, 1).plusDays(random.nextInt(7305));
            var zone = ZoneOffset.ofTotalSeconds((int) Math.round(place.longitude() * 240));
            cases.add(new Case(place, date, Daylight.of(place, zone, date)));
        }
        return cases;
    }

    private List<String> differences(Function<Case, Optional<Instant>> rises, Function<Case, Optional<Instant>> sets) {
        List<String> all = new ArrayList<>();
        for (Case one : cases) {
            if (one.ours() instanceof Daylight.RisesAndSets day) {
                compare(one, "sunrise", day.sunrise(), rises.apply(one), all);
                compare(one, "sunset", day.sunset(), sets.apply(one), all);
            } else if ((rises.apply(one).isPresent() || sets.apply(one).isPresent()) && !one.grazes())
                all.add("%s: the other library has a sunrise or a sunset".formatted(one));
        }
        return all;
    }

    private static void compare(Case one, String what, Instant ours, Optional<Instant> theirs, List<String> all) {
        if (theirs.isEmpty()) {
            if (!one.grazes()) all.add("%s: the other library has no %s".formatted(one, what));
            return;
        }
        double apart = Duration.between(ours, theirs.get()).toMillis() / 1000.0;
        if (abs(apart) > one.allowed(ours))
            all.add("%.2f %s: %s %.0f s".formatted(one.place().latitude(), one.date(), what, apart));
    }

    private static Optional<Instant> risesBySuncalc(Case one) {
        return Optional.ofNullable(
                        suncalc(one, one.ours().noon().minus(HALF_A_DAY)).getRise())
                .map(rise -> rise.toInstant());
    }

    private static Optional<Instant> setsBySuncalc(Case one) {
        return Optional.ofNullable(suncalc(one, one.ours().noon()).getSet()).map(set -> set.toInstant());
    }

    /** From one half of the day only, so that the event belongs to this noon. */
    private static SunTimes suncalc(Case one, Instant from) {
        return SunTimes.compute()
                .at(one.place().latitude(), one.place().longitude())
                .on(from)
                .timezone("UTC")
                .limit(HALF_A_DAY)
                .execute();
    }

    private static Optional<Instant> risesByTime4j(Case one) {
        return time4j(one).sunrise().apply(date(one)).map(DaylightLibrariesTests::instant);
    }

    private static Optional<Instant> setsByTime4j(Case one) {
        return time4j(one).sunset().apply(date(one)).map(DaylightLibrariesTests::instant);
    }

    private static SolarTime time4j(Case one) {
        return SolarTime.ofLocation(one.place().latitude(), one.place().longitude(), 0, StdSolarCalculator.TIME4J);
    }

    private static PlainDate date(Case one) {
        return PlainDate.of(
                one.date().getYear(), one.date().getMonthValue(), one.date().getDayOfMonth());
    }

    private static Instant instant(Moment moment) {
        return TemporalType.INSTANT.from(moment);
    }
}
