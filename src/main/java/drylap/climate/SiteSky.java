package drylap.climate;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.weather.DrivingRain;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import drylap.weather.OpenHours;
import drylap.weather.SiteWeather;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is known of a site's weather before it is drawn, hour by hour of the axis. */
public final class SiteSky {
    public static final int HOUR = 60;
    private static final double TO_THE_POWER = 8.0 / 9;

    final Site site;
    final Rules rules;
    final Climate climate;
    final int grid;

    final int hours;
    final RainChain chain;
    /** What falls in a wet hour on average beyond the least that counts. */
    final double[] excess;

    final double leastRain;
    final int drying;
    final double wetting;
    private final Forecast forecast;
    private final int first;
    private final Map<Task, KnownTimes> known = new EnumMap<>(Task.class);

    SiteSky(Site site, Forecast forecast, Rules rules, Climate climate, MinuteAxis axis, int planStart) {
        this.site = site;
        this.forecast = forecast;
        this.rules = rules;
        this.climate = climate;
        boolean told = !forecast.hours().isEmpty();
        grid = told ? Math.floorMod(axis.floor(forecast.hours().getFirst().start()), HOUR) : 0;
        hours = axis.length() / HOUR - 1;
        first = told ? Math.floorDiv(axis.floor(forecast.hours().getFirst().start()) - grid, HOUR) : hours;
        leastRain = rules.value(Rule.RAIN_MM);
        wetting = rules.value(Rule.WETTING);
        drying = (int) Math.ceil(rules.value(Rule.DRYING_H));
        double[] chances = new double[hours];
        excess = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            Climate.Month month = climate.in(month(axis.at(grid + hour * HOUR)));
            ForecastHour at = told(hour);
            chances[hour] = at == null ? beyond(month, hour, planStart) : chance(at, hour);
            double millimetres = at == null || at.rainMm() <= 0 ? month.millimetres() : at.rainMm();
            excess[hour] = Math.max(0.05, millimetres - leastRain);
        }
        chain = RainChain.of(chances, rules.value(Rule.RAIN_PERSISTENCE));
        know(axis);
    }

    /** Of what was before the plan and before any forecast nothing is known, and nothing is made up. */
    private double beyond(Climate.Month month, int hour, int planStart) {
        return (hour + 1) * HOUR + grid <= planStart ? 0 : month.wet();
    }

    private int month(Instant at) {
        return at.atZone(site.zone()).getMonthValue();
    }

    private @Nullable ForecastHour told(int hour) {
        int index = hour - first;
        return index >= 0 && index < forecast.hours().size() ? forecast.hours().get(index) : null;
    }

    /** Of a chance that is told for several hours together each gets the same share of it. */
    private double chance(ForecastHour at, int hour) {
        int from = hour;
        while (sharing(from - 1, at)) from--;
        int until = hour + 1;
        while (sharing(until, at)) until++;
        return until - from == 1
                ? at.rainProbability()
                : RainChain.hourly(at.rainProbability(), until - from, rules.value(Rule.RAIN_PERSISTENCE));
    }

    private boolean sharing(int hour, ForecastHour at) {
        ForecastHour other = told(hour);
        return other != null && other.sharesChanceWith(at);
    }

    private void know(MinuteAxis axis) {
        List<ForecastHour> dry = forecast.hours().stream().map(SiteSky::dry).toList();
        SiteWeather weather = SiteWeather.of(site, new Forecast(site.id(), dry), rules, axis.span());
        OpenHours open = weather.openHours(anyWall());
        for (Task task : Task.values()) known.put(task, new KnownTimes(open.windows(task), axis));
    }

    private Facade anyWall() {
        return new Facade(new drylap.kernel.FacadeId(site.id(), "any"), 0, null);
    }

    private static ForecastHour dry(ForecastHour hour) {
        return new ForecastHour(
                hour.start(),
                0,
                0,
                hour.windMs(),
                hour.gustMs(),
                hour.windFromDeg(),
                hour.temperatureC(),
                hour.relativeHumidity());
    }

    public Site site() {
        return site;
    }

    public Rules rules() {
        return rules;
    }

    public Climate climate() {
        return climate;
    }

    /** The first hour begins so many minutes after the axis: forecasts of half-hour zones do. */
    public int grid() {
        return grid;
    }

    public KnownTimes known(Task task) {
        return java.util.Objects.requireNonNull(known.get(task));
    }

    /**
     * The rain from which an hour wets a wall, in millimetres: what a millimetre drives on to it grows with the rain to a power,
     * which is undone here once rather than in each trial. Beyond the forecast the winds of its days come again; where there is
     * none, every rain wets every wall.
     */
    double[] wets(double azimuthDeg) {
        double[] wets = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            ForecastHour wind = wind(hour);
            double driven = wind == null
                    ? Double.POSITIVE_INFINITY
                    : DrivingRain.hourly(wind.windMs(), 1, wind.windFromDeg(), azimuthDeg);
            wets[hour] = Math.pow(wetting / driven, 1 / TO_THE_POWER);
        }
        return wets;
    }

    private @Nullable ForecastHour wind(int hour) {
        ForecastHour at = told(hour);
        int days = forecast.hours().size() / 24;
        if (at != null || days == 0) return at;
        return told(first + Math.floorMod(hour - first, days * 24));
    }

    /** Where the climate begins; none: from the start. */
    public @Nullable Instant forecastEnd() {
        return forecast.hours().isEmpty() ? null : forecast.end();
    }
}
