package drylap.forecasts.formats;

import drylap.forecasts.ForecastReader;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastWords;
import drylap.sites.Site;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** A file with the columns of a job folder's {@code forecast.csv}; the site's column may be absent, other sites' rows are passed over. */
public final class CsvForecast {
    private static final Map<String, Quantity> COLUMNS = new LinkedHashMap<>();

    static {
        COLUMNS.put("rain_mm", Quantity.RAIN);
        COLUMNS.put("rain_probability", Quantity.CHANCE);
        COLUMNS.put("wind_m_s", Quantity.WIND);
        COLUMNS.put("gust_m_s", Quantity.GUST);
        COLUMNS.put("wind_from_deg", Quantity.WIND_FROM);
        COLUMNS.put("temperature_c", Quantity.TEMPERATURE);
        COLUMNS.put("relative_humidity", Quantity.HUMIDITY);
    }

    private static final String HEADER = ForecastWords.HEADER.with("hour_start," + String.join(",", COLUMNS.keySet()));
    private static final String FILE = ForecastWords.THE_FILE.with();
    private static final int PERCENT = 100;

    private final Findings findings = new Findings();
    private final Hours hours = new Hours(findings);

    private CsvForecast() {}

    /** Reads the site's rows of a whole file. It does not say when the forecast was made. */
    public static ForecastReading read(byte[] bytes, Site site) {
        return new CsvForecast().reading(bytes, site);
    }

    private ForecastReading reading(byte[] bytes, Site site) {
        String text = text(bytes);
        if (text == null) return findings.refused();
        try (CSVParser parser = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))) {
            if (header(parser.getHeaderNames())) rows(parser, site);
        } catch (IOException | UncheckedIOException | IllegalArgumentException unreadable) {
            String reason = String.valueOf(unreadable.getMessage());
            findings.add(FILE, ForecastWords.NO_CSV.with(Findings.shown(reason)), ForecastWords.CSV_STANDARD.with());
        }
        return Normal.of(hours, site, null, findings);
    }

    private @Nullable String text(byte[] bytes) {
        if (bytes.length > ForecastReader.MOST_BYTES) {
            findings.add(FILE, ForecastWords.BYTES.with(bytes.length), ForecastWords.MOST_BYTES.with());
            return null;
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException malformed) {
            findings.add(FILE, ForecastWords.NOT_UTF_8.with(), ForecastWords.UTF_8.with());
            return null;
        }
    }

    private boolean header(List<String> names) {
        List<String> needed = new ArrayList<>(COLUMNS.keySet());
        needed.add("hour_start");
        needed.removeAll(names);
        for (String name : needed)
            findings.add(ForecastWords.CELL.with(1, name), ForecastWords.NOT_IN_HEADER.with(), HEADER);
        for (String name : names)
            if (!COLUMNS.containsKey(name)
                    && !List.of("site", "hour_start", "chance_from").contains(name))
                findings.add(ForecastWords.CELL.with(1, Findings.shown(name)), ForecastWords.NO_COLUMN.with(), HEADER);
        return findings.none();
    }

    private void rows(CSVParser parser, Site site) {
        boolean ours = false;
        for (CSVRecord row : parser) {
            String where = ForecastWords.LINE.with(parser.getCurrentLineNumber());
            if (!row.isConsistent()) {
                findings.add(where, ForecastWords.CELLS.with(row.size()), ForecastWords.AS_MANY_CELLS.with());
                continue;
            }
            if (row.isMapped("site") && !row.get("site").equals(site.id().value())) continue;
            ours = true;
            row(row, where);
        }
        if (!ours) findings.add(FILE, ForecastWords.NO_ROW.with(site.id()), ForecastWords.ONE_ROW.with());
    }

    private void row(CSVRecord row, String where) {
        Instant start = instant(row, "hour_start", where);
        if (start == null) return;
        boolean shared = row.isMapped("chance_from") && !row.get("chance_from").isBlank();
        Instant from = shared ? instant(row, "chance_from", where) : start;
        if (from == null) return;
        if (from.isAfter(start))
            findings.add(where + ", chance_from", ForecastWords.AFTER_HOUR.with(), ForecastWords.UP_TO_HOUR.with());
        COLUMNS.forEach((name, quantity) -> {
            Double value = number(row, name, where);
            if (value == null) return;
            if (quantity == Quantity.CHANCE) hours.share(where + ", " + name, start, value * PERCENT, from);
            else hours.put(where + ", " + name, quantity, start, value);
        });
    }

    private @Nullable Instant instant(CSVRecord row, String name, String where) {
        try {
            return OffsetDateTime.parse(row.get(name)).toInstant();
        } catch (DateTimeException unreadable) {
            findings.add(
                    where + ", " + name,
                    ForecastWords.NO_OFFSET.with(Findings.shown(row.get(name))),
                    ForecastWords.OFFSET_TIME.with());
            return null;
        }
    }

    /** A blank cell tells nothing. */
    private @Nullable Double number(CSVRecord row, String name, String where) {
        String text = row.get(name);
        if (text.isBlank()) return null;
        try {
            return Double.valueOf(text.strip());
        } catch (NumberFormatException unreadable) {
            findings.add(
                    where + ", " + name,
                    ForecastWords.NO_NUMBER.with(Findings.shown(text)),
                    ForecastWords.NUMBER_OR_BLANK.with());
            return null;
        }
    }
}
