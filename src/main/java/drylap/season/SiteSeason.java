package drylap.season;

import drylap.climate.SiteSky;
import drylap.climate.Skies;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.season.WorkingWeek.Stretch;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A site made ready for drawing years: its days, its walls' work, and when crews of each trade could be at it. */
final class SiteSeason {
    final Site site;
    final Rules rules;
    final Calendar calendar;
    final Skies skies;
    final List<WallWork> walls;
    /** By task. */
    final WorkingWeek[] weeks;
    /** By task: so many crews' worth of hands; below 1 where crews are shared with other sites. */
    final double[] crews;
    /** By task and day. */
    final List<List<List<Stretch>>> stretches;

    SiteSeason(JobFolder folder, SiteId id, SeasonRequest request) {
        site = folder.sites().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the job folder has no site %s".formatted(id)));
        rules = folder.rules().at(id);
        calendar = new Calendar(request.from(), site.zone());
        List<Facade> facades = folder.facades().stream()
                .filter(facade -> facade.id().site().equals(id))
                .toList();
        skies = new Skies(
                List.of(site),
                facades,
                folder.forecasts(),
                folder.rules(),
                request.normals(),
                calendar.axis,
                calendar.start);
        walls = facades.stream().map(facade -> work(folder, facade)).toList();
        weeks = Season.TASKS.stream().map(task -> week(folder, task)).toArray(WorkingWeek[]::new);
        crews = Season.TASKS.stream()
                .mapToDouble(task -> new Hands(folder, id).of(task, request.crews()))
                .toArray();
        stretches = Season.TASKS.stream()
                .map(task -> days(weeks[Season.TASKS.indexOf(task)], task))
                .toList();
    }

    private WallWork work(JobFolder folder, Facade facade) {
        List<Opening> openings = folder.openings().stream()
                .filter(opening -> opening.facade().equals(facade.id()))
                .toList();
        return new WallWork(facade, openings, folder.labour(), calendar);
    }

    private WorkingWeek week(JobFolder folder, Task task) {
        int setup = folder.openings().stream()
                .filter(opening -> opening.facade().site().equals(site.id()))
                .filter(opening -> opening.designedTasks().contains(task))
                .mapToInt(opening -> folder.labour().row(task, opening.method()).setupSiteMin())
                .max()
                .orElse(0);
        return new WorkingWeek(folder, task.trade(), folder.sites().indexOf(site), setup);
    }

    /** What is known of the light, and of gusts and cold in the forecast, is the same in every year. */
    private List<List<Stretch>> days(WorkingWeek week, Task known) {
        return IntStream.range(0, calendar.days)
                .mapToObj(day -> week.stretches(calendar.date(day), sky().known(known), calendar.axis, calendar.start))
                .toList();
    }

    /** Hours in which window crews have light, by day; cladding needs nothing else that is known. */
    List<List<Stretch>> light() {
        return days(weeks[0], Task.CLAD);
    }

    SiteSky sky() {
        return skies.at(0);
    }

    int minutes(Rule rule) {
        return (int) Math.ceil(rules.value(rule));
    }

    /** The chance that cold or gusts take a day; what is forecast is known better. */
    double[] lostDays() {
        double[] lost = new double[calendar.days];
        var end = sky().forecastEnd();
        int told = end == null ? calendar.start : calendar.axis.ceil(end);
        for (int day = 0; day < lost.length; day++)
            if (calendar.midnight(day) >= told)
                lost[day] =
                        sky().climate().in(calendar.date(day).getMonthValue()).lostDays();
        return lost;
    }

    /** Walls in the order in which crews go to them: the earliest due date first. */
    int[] order() {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, walls.size()).boxed().toList());
        order.sort(java.util.Comparator.comparingInt(wall -> walls.get(wall).due));
        return order.stream().mapToInt(Integer::intValue).toArray();
    }
}
