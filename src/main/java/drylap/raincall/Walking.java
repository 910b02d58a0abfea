package drylap.raincall;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.LabourRow;
import drylap.sites.Opening;
import java.util.List;
import java.util.Optional;

/** The ways within a site, as the labour table's set-up minutes for a facade and a level tell them. */
final class Walking {
    private Walking() {}

    static Walks between(JobFolder folder, List<Opening> open, Optional<OpeningId> standingAt) {
        var start = standingAt.flatMap(id ->
                folder.openings().stream().filter(one -> one.id().equals(id)).findFirst());
        int[] first = open.stream()
                .mapToInt(to -> start.map(from -> minutes(folder, from, to))
                        .orElseGet(() -> row(folder, to).setupFacadeMin()))
                .toArray();
        int[][] between = open.stream()
                .map(from ->
                        open.stream().mapToInt(to -> minutes(folder, from, to)).toArray())
                .toArray(int[][]::new);
        return Walks.of(first, between);
    }

    private static int minutes(JobFolder folder, Opening from, Opening to) {
        var row = row(folder, to);
        if (!from.facade().equals(to.facade())) return row.setupFacadeMin();
        return from.level() == to.level() ? 0 : row.setupLevelMin();
    }

    private static LabourRow row(JobFolder folder, Opening opening) {
        return folder.labour().row(Task.INSTALL, opening.method());
    }
}
