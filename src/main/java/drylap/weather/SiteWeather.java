package drylap.weather;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What the sky does at one site over a span: rain, darkness and the forecast's reach, all in whole minutes. */
public final class SiteWeather {
    private static final double TEST_MIN_C = 1;

    private final Site site;
    private final Forecast forecast;
    private final Rules rules;
    private final TimeWindow span;
    private final ForecastRain rain;
    private final MinuteMarks raining;
    private final MinuteMarks dark;
    private final MinuteMarks installShut;
    private final Map<Task, List<TimeWindow>> open = new EnumMap<>(Task.class);

    private SiteWeather(Site site, Forecast forecast, Rules rules, TimeWindow span) {
        this.site = site;
        this.forecast = forecast;
        this.rules = rules;
        this.span = span;
        rain = new ForecastRain(forecast, rules);
        raining = before(rain.raining(), Duration.ZERO);
        dark = darkMinutes();
        MinuteMarks gusts = hours(hour -> hour.gustMs() > rules.value(Rule.INSTALL_GUST));
        installShut = before(rain.raining(), minutes(Rule.SKIN_MIN))
                .and(hours(hour -> hour.temperatureC() < rules.value(Rule.INSTALL_MIN_C)), gusts, dark);
        open.put(Task.INSTALL, installShut.unmarked());
        open.put(
                Task.TEST,
                hours(hour -> hour.temperatureC() < TEST_MIN_C).and(gusts, dark).unmarked());
        open.put(
                Task.WRAP,
                hours(hour -> hour.gustMs() > rules.value(Rule.WRAP_GUST))
                        .and(raining, dark)
                        .unmarked());
        open.put(Task.CLAD, raining.and(dark).unmarked());
    }

    /** Reckons the days of sun that a site's weather of this span asks for, so that they are known when it does. */
    public static void reckonSun(Site site, TimeWindow span) {
        dates(site, span).forEach(date -> Daylight.of(site, date));
    }

    /** Refuses a forecast of another site. */
    public static SiteWeather of(Site site, Forecast forecast, Rules rules, TimeWindow span) {
        if (!forecast.site().equals(site.id()))
            throw new IllegalArgumentException(
                    "the forecast is of site %s, not of site %s".formatted(forecast.site(), site.id()));
        return new SiteWeather(site, forecast, rules, span);
    }

    /** Maximal windows of forecast rain within the span. */
    public List<TimeWindow> raining() {
        return raining.marked();
    }

    /** Maximal windows within the span that lie before sunrise or after sunset less the margin. */
    public List<TimeWindow> dark() {
        return dark.marked();
    }

    /** Where "beyond the forecast" begins; the far past when nothing is forecast. */
    public Instant forecastEnd() {
        return forecast.end();
    }

    /** The first raining hour that has not ended at {@code from}, also after the span. */
    public Optional<TimeWindow> nextRain(Instant from) {
        return rain.next(from);
    }

    /** The windows for each task on a facade of this site. */
    public OpenHours openHours(Facade facade) {
        if (!facade.id().site().equals(site.id()))
            throw new IllegalArgumentException("facade %s is not on site %s".formatted(facade.id(), site.id()));
        MinuteMarks drying = drying(facade.azimuthDeg());
        if (drying.isEmpty()) return new OpenHours(open);
        Map<Task, List<TimeWindow>> own = new EnumMap<>(open);
        own.put(Task.INSTALL, installShut.and(drying).unmarked());
        return new OpenHours(own);
    }

    /**
     * The chance of rain, 0 to 1, in the hours that the stretch touches: rain that lasts as the rule rain_persistence
     * says. An hour that is not forecast is as likely wet as the rule beyond_rain_p says.
     */
    public double chanceOfRain(Instant from, Instant until) {
        return rain.chance(from, until);
    }

    /** The same with the bounds that no model can leave. */
    public OddsOfRain oddsOfRain(Instant from, Instant until) {
        return rain.odds(from, until);
    }

    /** A wall still dries in the hours after one that wetted it, as far as the forecast reaches. */
    private MinuteMarks drying(double azimuthDeg) {
        MinuteMarks marks = MinuteMarks.none(span);
        Duration time = Duration.ofHours((long) Math.ceil(rules.value(Rule.DRYING_H)));
        for (ForecastHour hour : rain.wetting(azimuthDeg)) {
            Instant from = hour.start().plus(ForecastRain.HOUR);
            Instant until = from.plus(time);
            marks.mark(from, until.isAfter(forecastEnd()) ? forecastEnd() : until);
        }
        return marks;
    }

    private MinuteMarks hours(Predicate<ForecastHour> which) {
        return before(forecast.hours().stream().filter(which).toList(), Duration.ZERO);
    }

    private MinuteMarks before(List<ForecastHour> hours, Duration lead) {
        MinuteMarks marks = MinuteMarks.none(span);
        for (ForecastHour hour : hours)
            marks.mark(hour.start().minus(lead), hour.start().plus(ForecastRain.HOUR));
        return marks;
    }

    private MinuteMarks darkMinutes() {
        MinuteMarks marks = MinuteMarks.all(span);
        dates(site, span).forEach(date -> lighten(marks, date));
        return marks;
    }

    /** With a day before and one after, whose light may reach into the span. */
    private static Stream<LocalDate> dates(Site site, TimeWindow span) {
        LocalDate first = span.from().atZone(site.zone()).toLocalDate().minusDays(1);
        LocalDate last = span.until().atZone(site.zone()).toLocalDate().plusDays(1);
        return first.datesUntil(last.plusDays(1));
    }

    private void lighten(MinuteMarks marks, LocalDate date) {
        switch (Daylight.of(site, date)) {
            case Daylight.RisesAndSets day ->
                marks.unmark(day.sunrise(), day.sunset().minus(minutes(Rule.DUSK_MARGIN_MIN)));
            case Daylight.UpAllDay _ ->
                marks.unmark(
                        date.atStartOfDay(site.zone()).toInstant(),
                        date.plusDays(1).atStartOfDay(site.zone()).toInstant());
            case Daylight.DownAllDay _ -> {}
        }
    }

    private Duration minutes(Rule rule) {
        return Duration.ofNanos(Math.round(rules.value(rule) * 60e9));
    }
}
