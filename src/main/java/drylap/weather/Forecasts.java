package drylap.weather;

import static drylap.persistence.jooq.Tables.FORECAST;
import static drylap.persistence.jooq.Tables.FORECAST_HOUR;

import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.TableCopy;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.ForecastHourRecord;
import drylap.persistence.jooq.tables.records.ForecastRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The forecasts of each job folder, as stored; their sites are saved first. */
@Service
public final class Forecasts {
    private final DSLContext db;

    Forecasts(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Forecast> forecasts) {
        List<ForecastRecord> rows = new ArrayList<>(forecasts.size());
        for (Forecast forecast : forecasts)
            rows.add(new ForecastRecord(folder.value(), forecast.site().value(), rows.size()));
        db.batchInsert(rows).execute();
        TableCopy.add(
                db,
                forecasts.stream()
                        .flatMap(forecast -> forecast.hours().stream().map(hour -> row(folder, forecast.site(), hour)))
                        .toList());
    }

    public List<Forecast> of(FolderId folder) {
        return within(folder, Reach.EVERYWHERE);
    }

    /** Those of sites within reach. */
    public List<Forecast> within(FolderId folder, Reach reach) {
        Map<String, List<ForecastHour>> hours = db.selectFrom(FORECAST_HOUR)
                .where(FORECAST_HOUR.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(FORECAST_HOUR.SITE, reach))
                .orderBy(FORECAST_HOUR.SITE, FORECAST_HOUR.HOUR_START)
                .fetchGroups(ForecastHourRecord::getSite, Forecasts::hour);
        return db.selectFrom(FORECAST)
                .where(FORECAST.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(FORECAST.SITE, reach))
                .orderBy(FORECAST.ROW_NO)
                .fetch(row -> new Forecast(new SiteId(row.getSite()), hours.getOrDefault(row.getSite(), List.of())));
    }

    private static ForecastHourRecord row(FolderId folder, SiteId site, ForecastHour hour) {
        return new ForecastHourRecord(
                folder.value(),
                site.value(),
                hour.start(),
                hour.rainMm(),
                hour.rainProbability(),
                hour.windMs(),
                hour.gustMs(),
                hour.windFromDeg(),
                hour.temperatureC(),
                hour.relativeHumidity(),
                hour.chanceFrom());
    }

    private static ForecastHour hour(ForecastHourRecord row) {
        return new ForecastHour(
                row.getHourStart(),
                row.getRainMm(),
                row.getRainProbability(),
                row.getWindMS(),
                row.getGustMS(),
                row.getWindFromDeg(),
                row.getTemperatureC(),
                row.getRelativeHumidity(),
                row.getChanceFrom());
    }
}
