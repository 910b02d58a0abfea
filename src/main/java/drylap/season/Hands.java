package drylap.season;

import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import java.util.Map;

/** How many crews a site has: those that are asked for, else its share of the folder's by the work that is left. */
final class Hands {
    private final JobFolder folder;
    private final SiteId site;

    Hands(JobFolder folder, SiteId site) {
        this.folder = folder;
        this.site = site;
    }

    double of(Task task, Map<Trade, Integer> asked) {
        Integer count = asked.get(task.trade());
        if (count != null) return count;
        long all = folder.crews().stream()
                .filter(crew -> crew.trade() == task.trade())
                .filter(crew ->
                        folder.shifts().stream().anyMatch(shift -> shift.crew().equals(crew.id())))
                .count();
        double work = minutes(task, false);
        return work == 0 ? 0 : all * minutes(task, true) / work;
    }

    private double minutes(Task task, boolean here) {
        return folder.openings().stream()
                .filter(opening -> !here || opening.facade().site().equals(site))
                .filter(opening -> opening.tasks().contains(task))
                .mapToInt(opening -> minutes(opening, task))
                .sum();
    }

    private int minutes(Opening opening, Task task) {
        return folder.labour().minutes(opening, task);
    }
}
