package drylap.forecasts;

import drylap.kernel.Coded;
import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.KeptForecastRecord;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A kept forecast as a row: an array for each quantity. */
final class KeptRows {
    private KeptRows() {}

    static KeptForecastRecord row(ForecastSource source, Site site, ReadForecast read, Instant fetchedAt) {
        List<ForecastHour> hours = read.forecast().hours();
        KeptForecastRecord row = new KeptForecastRecord();
        row.setSite(site.id().value());
        row.setSource(source.code());
        row.setLatitude(site.place().latitude());
        row.setLongitude(site.place().longitude());
        row.setIssuedAt(read.issuedAt());
        row.setFetchedAt(fetchedAt);
        row.setRemarks(read.remarks().toArray(String[]::new));
        row.setFirstHour(hours.getFirst().start());
        row.setChanceSinceS(hours.stream()
                .map(hour -> Math.toIntExact(
                        Duration.between(hour.chanceFrom(), hour.start()).toSeconds()))
                .toArray(Integer[]::new));
        row.setRainMm(values(hours, ForecastHour::rainMm));
        row.setRainProbability(values(hours, ForecastHour::rainProbability));
        row.setWindMS(values(hours, ForecastHour::windMs));
        row.setGustMS(values(hours, ForecastHour::gustMs));
        row.setWindFromDeg(values(hours, ForecastHour::windFromDeg));
        row.setTemperatureC(values(hours, ForecastHour::temperatureC));
        row.setRelativeHumidity(values(hours, ForecastHour::relativeHumidity));
        periods(row, read.periods());
        return row;
    }

    private static void periods(KeptForecastRecord row, List<PeriodChance> periods) {
        Instant first = row.getFirstHour();
        row.setPeriodFromH(periods.stream()
                .map(period ->
                        Math.toIntExact(Duration.between(first, period.from()).toHours()))
                .toArray(Integer[]::new));
        row.setPeriodHours(periods.stream().map(PeriodChance::hours).toArray(Integer[]::new));
        row.setPeriodChance(periods.stream().map(PeriodChance::chance).toArray(Double[]::new));
    }

    private static List<PeriodChance> periods(KeptForecastRecord row) {
        List<PeriodChance> periods = new ArrayList<>();
        for (int i = 0; i < row.getPeriodFromH().length; i++)
            periods.add(new PeriodChance(
                    row.getFirstHour().plus(Duration.ofHours(row.getPeriodFromH()[i])),
                    row.getPeriodHours()[i],
                    row.getPeriodChance()[i]));
        return periods;
    }

    private static Double[] values(List<ForecastHour> hours, ToDoubleFunction<ForecastHour> value) {
        return hours.stream().map(hour -> value.applyAsDouble(hour)).toArray(Double[]::new);
    }

    static KeptForecast kept(KeptForecastRecord row) {
        List<ForecastHour> hours = new ArrayList<>();
        for (int i = 0; i < row.getRainMm().length; i++) hours.add(hour(row, i));
        return new KeptForecast(
                row.getId(),
                Coded.of(ForecastSource.class, row.getSource()),
                new GeoPoint(row.getLatitude(), row.getLongitude()),
                row.getFetchedAt(),
                new ReadForecast(
                        new Forecast(new SiteId(row.getSite()), hours),
                        row.getIssuedAt(),
                        List.of(row.getRemarks()),
                        periods(row)));
    }

    private static ForecastHour hour(KeptForecastRecord row, int i) {
        Instant start = row.getFirstHour().plus(Duration.ofHours(i));
        return new ForecastHour(
                start,
                row.getRainMm()[i],
                row.getRainProbability()[i],
                row.getWindMS()[i],
                row.getGustMS()[i],
                row.getWindFromDeg()[i],
                row.getTemperatureC()[i],
                row.getRelativeHumidity()[i],
                start.minusSeconds(row.getChanceSinceS()[i]));
    }
}
