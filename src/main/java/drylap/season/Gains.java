package drylap.season;

import drylap.season.SiteOutlook.FacadeGain;
import drylap.season.SiteOutlook.MonthGain;
import drylap.season.SiteOutlook.OneMore;
import drylap.season.Years.Outcome;
import drylap.season.Years.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** What one more crew changes: the same drawn years with it and without it, so that chance falls out of the difference. */
final class Gains {
    private static final int DAY = 24;

    private final SiteSeason season;
    private final Year[] years;
    private final boolean anyDue;

    Gains(SiteSeason season, Year[] years) {
        this.season = season;
        this.years = years;
        anyDue = season.walls.stream().anyMatch(WallWork::hasDue);
    }

    @Nullable
    Estimate inTime() {
        return anyDue ? mean(year -> inTime(year.plain)) : null;
    }

    /** Of trades that have crews and work. */
    List<OneMore> oneMore(double crewDayWeight, double lateWeight) {
        List<OneMore> all = new ArrayList<>();
        for (int task = 0; task < Season.TASKS.size(); task++) {
            int of = task;
            boolean work = season.walls.stream().anyMatch(wall -> wall.left[of] > 0);
            if (work && season.weeks[task].crews > 0) all.add(oneMore(task, crewDayWeight, lateWeight));
        }
        return all;
    }

    private OneMore oneMore(int task, double crewDayWeight, double lateWeight) {
        List<MonthGain> months = anyDue ? months(task) : List.of();
        Estimate crewDays =
                mean(year -> year.more[task].crewDays()[task] - year.plain.crewDays()[task]);
        return new OneMore(
                Season.TASKS.get(task).trade(),
                anyDue ? mean(year -> inTime(year.more[task]) - inTime(year.plain)) : null,
                mean(year -> year.plain.last() - year.more[task].last()),
                crewDays,
                crewDays.value() * crewDayWeight,
                mean(year -> late(year.plain) - late(year.more[task])).value() * lateWeight,
                pays(months),
                months,
                facades(task));
    }

    private List<MonthGain> months(int task) {
        List<MonthGain> months = new ArrayList<>();
        for (int month = 0; month < Season.MONTHS; month++) {
            int in = month;
            months.add(new MonthGain(
                    season.calendar.month(month), mean(year -> inTime(year.inMonth[task][in]) - inTime(year.plain))));
        }
        return months;
    }

    private static @Nullable YearMonth pays(List<MonthGain> months) {
        return months.stream()
                .filter(month -> month.gained().value() >= Season.PAYS)
                .map(MonthGain::month)
                .findFirst()
                .orElse(null);
    }

    private List<FacadeGain> facades(int task) {
        List<FacadeGain> all = new ArrayList<>();
        for (int wall = 0; wall < season.walls.size(); wall++) {
            int at = wall;
            WallWork work = season.walls.get(wall);
            all.add(new FacadeGain(
                    work.wall.id(),
                    work.hasDue() ? mean(year -> inTime(year.more[task], at) - inTime(year.plain, at)) : null,
                    mean(year -> year.plain.through()[at] - year.more[task].through()[at])));
        }
        return all;
    }

    private int inTime(Outcome outcome) {
        for (int wall = 0; wall < season.walls.size(); wall++)
            if (season.walls.get(wall).hasDue() && inTime(outcome, wall) == 0) return 0;
        return 1;
    }

    private int inTime(Outcome outcome, int wall) {
        return season.walls.get(wall).inTime(outcome.through()[wall], season.calendar.days) ? 1 : 0;
    }

    private double late(Outcome outcome) {
        double hours = 0;
        for (int wall = 0; wall < season.walls.size(); wall++)
            if (season.walls.get(wall).hasDue())
                hours += DAY * Math.max(0, outcome.through()[wall] - season.walls.get(wall).due);
        return hours;
    }

    private Estimate mean(ToDoubleFunction<Year> of) {
        return Estimate.of(Arrays.stream(years).mapToDouble(of).toArray());
    }
}
