package drylap.fuzz;

import static drylap.forecasts.ForecastSource.CSV;
import static drylap.forecasts.ForecastSource.MET_NORWAY;
import static drylap.forecasts.ForecastSource.OPEN_METEO;
import static drylap.forecasts.ForecastSource.US_WEATHER_SERVICE;

import drylap.api.RestBodies;
import drylap.buildingmodel.BuildingModels;
import drylap.buildingmodel.ModelReading;
import drylap.forecasts.ForecastReader;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastSource;
import drylap.pictures.BadPicture;
import drylap.pictures.Picture;
import drylap.pictures.Pictures;
import drylap.weather.ForecastHour;
import drylap.windowschedule.Draft;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Header;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.ScheduleFiles;
import drylap.windowschedule.Sheet;
import drylap.windowschedule.SiteWithWalls;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A reader of files from outside that takes any bytes at all: it reads them or says why not, and never throws. Each has a folder of files to begin
 * with, into which every input that was ever found to break it goes too. A further reader is one more of these.
 */
enum FuzzTarget {
    BUILDING_MODEL("building-model", FuzzTarget::model),
    WINDOW_SCHEDULE("window-schedule", FuzzTarget::schedule),
    FORECAST_CSV("forecast-csv", bytes -> forecast(CSV, bytes)),
    FORECAST_US_WEATHER_SERVICE("forecast-us-weather-service", bytes -> forecast(US_WEATHER_SERVICE, bytes)),
    FORECAST_OPEN_METEO("forecast-open-meteo", bytes -> forecast(OPEN_METEO, bytes)),
    FORECAST_MET_NORWAY("forecast-met-norway", bytes -> forecast(MET_NORWAY, bytes)),
    PHOTO("photo", FuzzTarget::photo),
    REST_BODY("rest-body", RestBodies::read);

    private static final Path SEEDS = Path.of("src/test/resources/fuzz");

    private final String code;
    private final Consumer<byte[]> reader;

    FuzzTarget(String code, Consumer<byte[]> reader) {
        this.code = code;
        this.reader = reader;
    }

    String code() {
        return code;
    }

    static FuzzTarget of(String code) {
        return Arrays.stream(values())
                .filter(one -> one.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no target %s; accepted: %s"
                        .formatted(
                                code,
                                Arrays.stream(values()).map(FuzzTarget::code).toList())));
    }

    /** @throws RuntimeException or an Error where the reader is broken by these bytes */
    void read(byte[] bytes) {
        reader.accept(bytes);
    }

    Path seeds() {
        return SEEDS.resolve(code);
    }

    List<Path> seedFiles() {
        try (Stream<Path> files = Files.list(seeds())) {
            return files.sorted().toList();
        } catch (IOException none) {
            throw new UncheckedIOException(none);
        }
    }

    private static void model(byte[] bytes) {
        switch (BuildingModels.read(bytes)) {
            case ModelReading.Read read -> must(!read.windows().isEmpty(), "a model without windows was read");
            case ModelReading.Refused refused ->
                must(!refused.wrong().isBlank() && !refused.accepted().isBlank(), "refused without a reason");
        }
    }

    /** From the file to what it would make of a site. */
    private static void schedule(byte[] bytes) {
        if (!(ScheduleFiles.read("schedule", bytes) instanceof FileReading.Read read)) return;
        Sheet sheet = read.sheets().getFirst();
        Header header = Header.find(sheet).orElseGet(() -> Header.at(sheet, 0, 1));
        var draft = Draft.of("schedule", sheet, header, SiteWithWalls.choices());
        Outcomes.of(draft, Folder.ONE, Set.of());
    }

    private static void forecast(ForecastSource source, byte[] bytes) {
        switch (ForecastReader.of(source).read(bytes, Folder.ONE.sites().getFirst())) {
            case ForecastReading.Read read -> hours(read.forecast().forecast().hours());
            case ForecastReading.Refused refused -> must(!refused.summary().isBlank(), "refused without a reason");
        }
    }

    /** What is read is kept and planned by, so each number must be one. */
    private static void hours(List<ForecastHour> hours) {
        for (ForecastHour hour : hours)
            must(
                    hour.rainMm() >= 0
                            && hour.rainProbability() >= 0
                            && hour.rainProbability() <= 1
                            && hour.gustMs() >= 0
                            && Double.isFinite(hour.rainMm())
                            && Double.isFinite(hour.gustMs()),
                    "an hour that cannot be was read: " + hour);
    }

    /** By its content, whatever it is called; what is kept of it can be looked at again. */
    private static void photo(byte[] bytes) {
        Picture seen;
        try {
            seen = Pictures.lookAt(bytes, false);
        } catch (BadPicture refused) {
            must(!refused.saying().words().isBlank(), "refused without a reason");
            return;
        }
        try {
            Pictures.lookAt(seen.bytes(), false);
        } catch (BadPicture unfit) {
            throw new IllegalStateException("what is kept of a photo is none", unfit);
        }
    }

    private static void must(boolean holds, String why) {
        if (!holds) throw new IllegalStateException(why);
    }

    /** Read once. */
    private static final class Folder {
        static final drylap.planning.JobFolder ONE = SiteWithWalls.folder();
    }
}
