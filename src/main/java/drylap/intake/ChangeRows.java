package drylap.intake;

import drylap.intake.csv.Row;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.weather.Forecast;
import drylap.whatif.AddCrew;
import drylap.whatif.Change;
import drylap.whatif.DelayDelivery;
import drylap.whatif.DropDay;
import drylap.whatif.OtherForecast;
import drylap.whatif.OtherRain;
import drylap.whatif.RainByPercent;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One row of a file of scenarios as a change; null where it is none, and why is told. */
final class ChangeRows {
    private static final String KINDS = "add crew, drop day, delay delivery, rain, no rain, rain by percent";

    private final Known known;
    private final Function<Row, @Nullable List<Forecast>> forecast;

    ChangeRows(JobFolder folder, Function<Row, @Nullable List<Forecast>> forecast) {
        known = Known.of(folder);
        this.forecast = forecast;
    }

    @Nullable
    Change read(Row row) {
        return switch (row.raw("change")) {
            case "add crew" -> addCrew(row);
            case "drop day" -> dropDay(row);
            case "delay delivery" -> delay(row);
            case "rain" -> rain(row, true);
            case "no rain" -> rain(row, false);
            case "rain by percent" -> new RainByPercent(row.number("percent", FolderWords.PERCENT.with(), -100, 1000));
            case "forecast" -> forecast(row);
            default -> {
                row.wrong("change", FolderWords.UNKNOWN.with(), FolderWords.ONE_OF_OR.with(KINDS, "forecast"));
                yield null;
            }
        };
    }

    private Change addCrew(Row row) {
        CrewId crew = new CrewId(row.text("crew"));
        if (known.crews.known(crew) || known.sites.known(new SiteId(crew.value())))
            row.wrong("crew", FolderWords.TAKEN.with(), FolderWords.FREE.with());
        CrewId like = new CrewId(row.text("like"));
        known.crews.require(row, "like", like);
        return new AddCrew(crew, like, row.date("date"));
    }

    private @Nullable Change dropDay(Row row) {
        if (!oneOf(row, "crew", "site")) return null;
        CrewId crew = row.optional("crew", column -> new CrewId(row.text(column)));
        if (crew != null) known.crews.require(row, "crew", crew);
        SiteId site = row.optional("site", _ -> site(row));
        return new DropDay(row.date("date"), crew, site);
    }

    private @Nullable Change delay(Row row) {
        if (!oneOf(row, "facade", "opening")) return null;
        OpeningId opening = row.optional("opening", column -> new OpeningId(row.text(column)));
        if (opening != null) known.openings.require(row, "opening", opening);
        FacadeId facade = row.optional("facade", column -> new FacadeId(site(row), row.text(column)));
        if (facade != null) known.facades.require(row, "facade", facade);
        return new DelayDelivery(facade, opening, row.whole("days", "days", 1, 365));
    }

    private @Nullable Change rain(Row row, boolean rains) {
        SiteId site = site(row);
        Instant from = row.instant("from");
        Instant until = row.instant("until");
        if (!row.sound()) return null;
        if (!from.isBefore(until)) {
            row.wrong("until", FolderWords.NOT_AFTER_FROM.with(), FolderWords.AFTER_FROM.with());
            return null;
        }
        return new OtherRain(site, new TimeWindow(from, until), rains);
    }

    private @Nullable Change forecast(Row row) {
        List<Forecast> read = forecast.apply(row);
        return read == null ? null : new OtherForecast(read);
    }

    private SiteId site(Row row) {
        SiteId site = new SiteId(row.text("site"));
        known.sites.require(row, "site", site);
        return site;
    }

    private static boolean oneOf(Row row, String one, String other) {
        if (row.blank(one) != row.blank(other)) return true;
        row.wrong(
                one,
                (row.blank(one) ? FolderWords.BLANK_BOTH : FolderWords.BESIDE).with(other),
                FolderWords.ONE_OF_BOTH.with());
        return false;
    }
}
