package drylap.forecasts.fetching;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.forecasts.ForecastSettings;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.ForecastWords;
import drylap.forecasts.formats.GridCell;
import drylap.kernel.GeoPoint;
import drylap.sites.Site;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Asks any source for the forecast of a site. */
public final class Sources implements AutoCloseable {
    private final ForecastSettings settings;
    private final Addresses addresses;
    private final SourceClient client;
    private final Cache<GeoPoint, String> cells = Caffeine.newBuilder()
            .maximumSize(1000)
            .expireAfterWrite(Duration.ofDays(1))
            .build();

    public Sources(ForecastSettings settings, Clock clock) {
        this.settings = settings;
        addresses = new Addresses(settings);
        client = new SourceClient(settings, clock);
    }

    /**
     * @param cell the US service's grid cell where somebody chose it, such as {@code SEW/125,68}; else it is asked for
     * @param known the stamp of the last answer
     */
    public Answer ask(ForecastSource source, Site site, @Nullable String cell, Answer.Stamp known)
            throws InterruptedException {
        if (settings.base(source).isBlank())
            return new Answer.None(ForecastWords.NO_ADDRESS.with(source.words()), false, null);
        try {
            return switch (source) {
                case US_WEATHER_SERVICE -> gridpoint(site, cell, known);
                case OPEN_METEO -> client.ask(addresses.openMeteo(site), known);
                case MET_NORWAY -> client.ask(addresses.metNorway(site), known);
                case CSV -> client.ask(addresses.csv(site), known);
                case UPLOAD -> new Answer.None(ForecastWords.NOBODY_ASKED.with(), false, null);
            };
        } catch (IllegalArgumentException noAddress) {
            return new Answer.None(ForecastWords.BAD_ADDRESS.with(source.words(), settings.base(source)), false, null);
        }
    }

    private Answer gridpoint(Site site, @Nullable String chosen, Answer.Stamp known) throws InterruptedException {
        String cell = chosen != null ? chosen : cells.getIfPresent(site.place());
        if (cell != null) return client.ask(addresses.gridpoint(cell), known);
        URI where = addresses.gridCell(site);
        return switch (client.ask(where, Answer.Stamp.NONE)) {
            case Answer.None none -> none;
            case Answer.Unchanged _ -> new Answer.None(ForecastWords.NO_CELL.with(where.getHost()), false, null);
            case Answer.Whole whole -> {
                String found = GridCell.read(whole.bytes()).orElse(null);
                if (found == null) yield new Answer.None(ForecastWords.NO_CELL_HERE.with(where.getHost()), false, null);
                cells.put(site.place(), found);
                yield client.ask(addresses.gridpoint(found), known);
            }
        };
    }

    @Override
    public void close() {
        client.close();
    }
}
