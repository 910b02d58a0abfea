package drylap.season;

import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import java.util.List;
import java.util.concurrent.ForkJoinPool;

/** Works a site's remaining work through drawn years. */
public final class Season {
    /** The month of the start and those after it. */
    public static final int MONTHS = 12;

    /** One more crew pays from so much of chance gained on; a choice of this project. */
    public static final double PAYS = 0.1;

    /** Water tests are left out. */
    static final List<Task> TASKS = List.of(Task.INSTALL, Task.WRAP, Task.CLAD);

    private Season() {}

    /** The same request gives the same outlook on any number of processors. */
    public static SiteOutlook of(JobFolder folder, SiteId site, SeasonRequest request) {
        return of(folder, site, request, ForkJoinPool.commonPool());
    }

    static SiteOutlook of(JobFolder folder, SiteId site, SeasonRequest request, ForkJoinPool pool) {
        SiteSeason season = new SiteSeason(folder, site, request);
        return new Telling(season, new Years(season, pool).run(request.years(), request.seed()), request).outlook();
    }
}
