package drylap.forecasts;

import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

/** An answer in the structure of its source, written for these tests, to be spoilt text by text. */
public record Payload(ForecastSource source, String text) {
    public static final Site QUAY = new Site(
            new SiteId("quay"),
            "Quay",
            new GeoPoint(47.6062, -122.3321),
            ZoneId.of("America/Los_Angeles"),
            Terrain.III);

    public static Payload of(ForecastSource source) {
        return new Payload(
                source,
                resource(
                        switch (source) {
                            case US_WEATHER_SERVICE -> "gridpoint.json";
                            case OPEN_METEO -> "open-meteo.json";
                            case MET_NORWAY -> "locationforecast.json";
                            case CSV, UPLOAD -> "forecast.csv";
                        }));
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Payload.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces text that stands in the answer. */
    public Payload change(String from, String to) {
        if (!text.contains(from)) throw new IllegalArgumentException(source + " does not hold " + from);
        return new Payload(source, text.replace(from, to));
    }

    public byte[] bytes() {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    public ForecastReading read() {
        return ForecastReader.of(source).read(bytes(), QUAY);
    }

    /** The forecast of an answer that is sound. */
    ReadForecast sound() {
        return switch (read()) {
            case ForecastReading.Read read -> read.forecast();
            case ForecastReading.Refused refused ->
                throw new AssertionError(refused.problems().toString());
        };
    }

    /** The problems of one that is refused. */
    List<String> problems() {
        return switch (read()) {
            case ForecastReading.Read _ -> List.of("nothing is wrong");
            case ForecastReading.Refused refused ->
                refused.problems().stream().map(ForecastProblem::toString).toList();
        };
    }
}
