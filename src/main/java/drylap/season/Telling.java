package drylap.season;

import drylap.kernel.Rule;
import drylap.kernel.Trade;
import drylap.season.SiteOutlook.FacadeOutlook;
import drylap.season.SiteOutlook.Month;
import drylap.season.WorkingWeek.Stretch;
import drylap.season.Years.Year;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Makes an outlook of drawn years. */
final class Telling {
    private static final double HOUR = 60;

    private final SiteSeason season;
    private final Year[] years;
    private final SeasonRequest request;
    private final double[] light = new double[Season.MONTHS];
    private final int[] workDays = new int[Season.MONTHS];

    Telling(SiteSeason season, Year[] years, SeasonRequest request) {
        this.season = season;
        this.years = years;
        this.request = request;
        List<List<Stretch>> days = season.light();
        for (int day = 0; day < days.size(); day++) {
            int month = season.calendar.monthOf(day);
            int sum = 0;
            for (Stretch part : days.get(day)) sum += part.crews() * (part.until() - part.from());
            if (sum > 0) workDays[month]++;
            light[month] += sum / HOUR / Math.max(1, season.weeks[0].crews);
        }
    }

    SiteOutlook outlook() {
        var sky = season.sky();
        Gains gains = new Gains(season, years);
        List<FacadeOutlook> facades = new ArrayList<>();
        for (int wall = 0; wall < season.walls.size(); wall++) facades.add(facade(wall));
        return new SiteOutlook(
                season.site.id(),
                request.from(),
                request.years(),
                request.seed(),
                sky.climate().words(),
                sky.climate().assumed(),
                sky.forecastEnd(),
                crews(),
                gains.inTime(),
                facades,
                gains.oneMore(
                        season.rules.value(Rule.WEIGHT_CREW_DAYS), season.rules.value(Rule.WEIGHT_LATE_HANDOVER)));
    }

    private Map<Trade, Double> crews() {
        Map<Trade, Double> crews = new EnumMap<>(Trade.class);
        for (int task = 0; task < season.crews.length; task++)
            crews.put(Season.TASKS.get(task).trade(), season.crews[task]);
        return crews;
    }

    private FacadeOutlook facade(int wall) {
        WallWork work = season.walls.get(wall);
        int[] through = Arrays.stream(years)
                .mapToInt(year -> year.plain.through()[wall])
                .sorted()
                .toArray();
        Estimate inTime = work.hasDue()
                ? mean(year -> work.inTime(year.plain.through()[wall], season.calendar.days) ? 1 : 0)
                : null;
        List<Month> months = new ArrayList<>();
        for (int month = 0; month < Season.MONTHS; month++) months.add(month(wall, month));
        return new FacadeOutlook(
                work.wall.id(),
                work.wall.handoverDue(),
                work.left[0] / HOUR,
                work.left[1] / HOUR,
                work.left[2] / HOUR,
                work.least[0] / HOUR,
                date(through, 0.5),
                date(through, 0.8),
                date(through, 0.9),
                inTime,
                months);
    }

    /** What is done from the start was done by then. */
    private @Nullable LocalDate date(int[] sorted, double share) {
        int day = sorted[rank(sorted.length, share)];
        return day == season.calendar.days ? null : season.calendar.date(Math.max(0, day));
    }

    private static int rank(int count, double share) {
        return Math.clamp((int) Math.ceil(share * count) - 1, 0, count - 1);
    }

    private Month month(int wall, int month) {
        double[] hours = Arrays.stream(years)
                .mapToDouble(year -> year.usable[wall][month])
                .toArray();
        double[] sorted = hours.clone();
        Arrays.sort(sorted);
        return new Month(
                season.calendar.month(month),
                workDays[month],
                light[month],
                Estimate.of(hours),
                sorted[rank(sorted.length, 0.1)],
                sorted[rank(sorted.length, 0.5)],
                sorted[rank(sorted.length, 0.9)],
                mean(year -> year.left[month][wall][0] / HOUR).value(),
                mean(year -> Arrays.stream(year.left[month][wall]).sum() / HOUR).value());
    }

    private Estimate mean(ToDoubleFunction<Year> of) {
        return Estimate.of(Arrays.stream(years).mapToDouble(of).toArray());
    }
}
