package drylap.intake;

import drylap.crews.Shift;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A folder as it would be in another week: every date moves by the same whole number of weeks and every clock time stays,
 * whatever daylight saving does in between.
 */
public final class ShiftedFolder {
    private final JobFolder folder;
    private final Zones zones;
    private final long weeks;

    private ShiftedFolder(JobFolder folder, long weeks) {
        this.folder = folder;
        this.zones = Zones.of(folder.sites());
        this.weeks = weeks;
    }

    /**
     * Moves the week of the folder's first shift to the one that starts on {@code monday}.
     *
     * @throws IllegalArgumentException where that is not a Monday
     */
    public static JobFolder toWeekOf(JobFolder folder, LocalDate monday) {
        if (monday.getDayOfWeek() != DayOfWeek.MONDAY)
            throw new IllegalArgumentException(
                    "%s is a %s; accepted is a Monday".formatted(monday, monday.getDayOfWeek()));
        LocalDate first = folder.shifts().stream()
                .map(Shift::date)
                .min(LocalDate::compareTo)
                .orElse(monday)
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new ShiftedFolder(folder, ChronoUnit.WEEKS.between(first, monday)).shifted();
    }

    private JobFolder shifted() {
        return new JobFolder(
                folder.sites(),
                folder.facades().stream().map(this::facade).toList(),
                folder.openings().stream().map(this::opening).toList(),
                folder.crews(),
                folder.shifts().stream().map(this::shift).toList(),
                folder.travel(),
                folder.forecasts().stream().map(this::forecast).toList(),
                folder.labour(),
                folder.rules(),
                folder.published().stream().map(this::visit).toList());
    }

    private Facade facade(Facade facade) {
        LocalDate due = facade.handoverDue();
        return new Facade(facade.id(), facade.azimuthDeg(), due == null ? null : due.plusWeeks(weeks));
    }

    private Opening opening(Opening o) {
        return new Opening(
                o.id(),
                o.facade(),
                o.level(),
                o.widthMm(),
                o.heightMm(),
                o.frame(),
                o.method(),
                o.approach(),
                o.secondLayer(),
                o.deliveredOn().plusWeeks(weeks),
                o.waterTest(),
                o.priority(),
                o.done(),
                doneAt(o.doneAt(), o.facade().site()),
                o.finished());
    }

    private @Nullable Instant doneAt(@Nullable Instant doneAt, SiteId site) {
        return doneAt == null ? null : moved(doneAt, zones.of(site));
    }

    private Shift shift(Shift shift) {
        return shift.on(shift.date().plusWeeks(weeks));
    }

    /** A forecast is a run of hours, so it moves as one block from its first hour: clocks may change inside it. */
    private Forecast forecast(Forecast forecast) {
        if (forecast.hours().isEmpty()) return forecast;
        Instant first = forecast.hours().getFirst().start();
        var by = java.time.Duration.between(first, moved(first, zones.of(forecast.site())));
        List<ForecastHour> hours = forecast.hours().stream()
                .map(hour -> hour.at(hour.start().plus(by)))
                .toList();
        return new Forecast(forecast.site(), hours);
    }

    private PublishedVisit visit(PublishedVisit published) {
        Visit v = published.visit();
        ZoneId zone = zones.of(v.facade().site());
        Visit moved = new Visit(
                v.crew(),
                v.date().plusWeeks(weeks),
                v.sequence(),
                v.facade(),
                v.level(),
                v.opening(),
                v.task(),
                moved(v.start(), zone),
                moved(v.end(), zone));
        return new PublishedVisit(moved, published.pinned());
    }

    private Instant moved(Instant instant, ZoneId zone) {
        return instant.atZone(zone).plusWeeks(weeks).toInstant();
    }
}
