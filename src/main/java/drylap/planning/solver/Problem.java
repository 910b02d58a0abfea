package drylap.planning.solver;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.LedgerTerm;
import drylap.planning.OpenWindow;
import drylap.planning.UnplannedReason;
import drylap.sites.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A job folder compiled for the search: everything numbered, in whole minutes, linked. Immutable once made.
 *
 * @param tasks every task that a crew could do, pinned ones included
 * @param never tasks that no crew may do, with the reason; they are in {@code tasks} too
 * @param units what the crew lists are made of: all tasks but the pinned and the never planned
 */
record Problem(
        JobFolder folder,
        TimeAxis axis,
        int horizonEnd,
        List<Site> sites,
        List<FacadeWork> facades,
        List<CourseWork> courses,
        List<WorkTask> tasks,
        Map<WorkTask, UnplannedReason> never,
        List<Unit> units,
        List<CrewCalendar> crews,
        int[][] travel,
        List<OpenWindow> openWindows,
        int[][] unitsByKindAndCourse,
        List<List<CrewCalendar>> crewsByKind,
        Kinship kinship,
        long[] weights,
        List<Limits> limitsOfSites,
        DryHours dryHours) {
    /** What an opening costs that stands open at the start and is not closed before the next rain. */
    static final long EXPOSED_COST = 5000;

    static Problem of(JobFolder folder, @Nullable Instant now) {
        return ProblemCompiler.compile(folder, Span.of(folder, now));
    }

    List<CrewCalendar> crews(Task kind) {
        return crewsByKind.get(kind.ordinal());
    }

    /** Units of the same kind on the same facade, itself included. */
    List<Unit> relatives(Unit unit) {
        return kinship.onFacade().get(unit.index);
    }

    /** Units of the same kind on the same course, itself included; those on the facade where it is the only one. */
    List<Unit> neighbours(Unit unit) {
        return kinship.onCourse().get(unit.index);
    }

    List<Unit> units(Task kind) {
        return kinship.ofKind().get(kind.ordinal());
    }

    /** Which units belong together: by unit those of its kind and facade, and of its course, and all by kind. */
    record Kinship(List<List<Unit>> onFacade, List<List<Unit>> onCourse, List<List<Unit>> ofKind) {
        private record Key(int where, Task kind) {}

        static Kinship of(List<Unit> units) {
            List<List<Unit>> onFacade = together(units, unit -> new Key(unit.course.facade.index, unit.kind));
            List<List<Unit>> onCourse = new ArrayList<>(together(units, unit -> new Key(unit.course.index, unit.kind)));
            for (int i = 0; i < units.size(); i++) if (onCourse.get(i).size() == 1) onCourse.set(i, onFacade.get(i));
            return new Kinship(
                    onFacade,
                    onCourse,
                    Arrays.stream(Task.values())
                            .map(kind -> units.stream()
                                    .filter(unit -> unit.kind == kind)
                                    .toList())
                            .toList());
        }

        private static List<List<Unit>> together(List<Unit> units, Function<Unit, Key> by) {
            Map<Key, List<Unit>> groups = units.stream().collect(Collectors.groupingBy(by));
            return units.stream()
                    .map(unit -> Objects.requireNonNull(groups.get(by.apply(unit))))
                    .toList();
        }
    }

    int unitsOf(CourseWork course, Task kind) {
        return unitsByKindAndCourse[kind.ordinal()][course.index];
    }

    /** The course whose tasks of this kind must be through first, if any. */
    @Nullable
    CourseWork below(CourseWork course, Task kind) {
        return switch (kind) {
            case WRAP -> course.wrapsAbove;
            case CLAD -> course.cladsAbove;
            case INSTALL, TEST -> null;
        };
    }

    long weight(LedgerTerm term) {
        return weights[term.ordinal()];
    }

    /** Those of the task's site. */
    Limits limits(WorkTask task) {
        return limitsOfSites.get(task.site);
    }

    /** By when a wrap must have ended for the sake of installs that were complete before the plan. */
    int wrapBy(WorkTask wrap) {
        int apron = wrap.course.firstInstalledEnd + limits(wrap).apron();
        boolean bare = !wrap.opening.method().barrierFirst();
        return Math.min(apron, bare ? wrap.ownInstalledEnd + limits(wrap).bare() : TimeAxis.NEVER);
    }

    /** Minutes that lie between tasks: at least (cure), at most (apron, bare). */
    record Limits(int cure, int apron, int bare) {
        static Limits of(Rules rules) {
            return new Limits(
                    (int) Math.ceil(rules.value(Rule.CURE_BEFORE_TEST_H) * 60),
                    (int) Math.floor(rules.value(Rule.APRON_MAX_DAYS) * 1440),
                    (int) Math.floor(rules.value(Rule.BARE_MAX_DAYS) * 1440));
        }
    }

    static long[] weights(JobFolder folder) {
        return Arrays.stream(LedgerTerm.values())
                .mapToLong(term -> folder.rules().everywhere().whole(term.weight()))
                .toArray();
    }
}
