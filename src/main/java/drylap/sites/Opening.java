package drylap.sites;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList;
import drylap.assembly.Variant;
import drylap.assembly.WorkList;
import drylap.kernel.Course;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An opening as designed, and how far its install had come when it was imported.
 *
 * @param deliveredOn the first date on which the window may be set
 * @param priority 0 is ordinary; each step up makes leaving it unplanned costlier
 * @param done the number of the last line done of its {@link StepList}; 0 is none
 * @param doneAt when that line was done, where known
 * @param finished further tasks that are done, such as the wrap; the install's state is {@code done}
 */
public record Opening(
        OpeningId id,
        FacadeId facade,
        int level,
        int widthMm,
        int heightMm,
        Frame frame,
        Method method,
        Approach approach,
        SecondLayer secondLayer,
        LocalDate deliveredOn,
        boolean waterTest,
        int priority,
        int done,
        @Nullable Instant doneAt,
        Set<Task> finished) {
    public Opening {
        finished = Set.copyOf(finished);
        if (finished.contains(Task.INSTALL))
            throw new IllegalArgumentException(
                    "whether the install of %s is finished follows from its lines".formatted(id));
    }

    /** None of the further tasks is finished. */
    public Opening(
            OpeningId id,
            FacadeId facade,
            int level,
            int widthMm,
            int heightMm,
            Frame frame,
            Method method,
            Approach approach,
            SecondLayer secondLayer,
            LocalDate deliveredOn,
            boolean waterTest,
            int priority,
            int done,
            @Nullable Instant doneAt) {
        this(
                id,
                facade,
                level,
                widthMm,
                heightMm,
                frame,
                method,
                approach,
                secondLayer,
                deliveredOn,
                waterTest,
                priority,
                done,
                doneAt,
                Set.of());
    }

    /** The same opening as it stands by now. */
    public Opening standing(int doneNow, @Nullable Instant doneNowAt, Set<Task> finishedNow) {
        return new Opening(
                id,
                facade,
                level,
                widthMm,
                heightMm,
                frame,
                method,
                approach,
                secondLayer,
                deliveredOn,
                waterTest,
                priority,
                doneNow,
                doneNowAt,
                finishedNow);
    }

    /** The same opening, as far as it has come, with another place, size, frame or method. */
    public Opening designed(
            FacadeId facadeNow, int levelNow, int widthNowMm, int heightNowMm, Frame frameNow, Method methodNow) {
        return new Opening(
                id,
                facadeNow,
                levelNow,
                widthNowMm,
                heightNowMm,
                frameNow,
                methodNow,
                approach,
                secondLayer,
                deliveredOn,
                waterTest,
                priority,
                done,
                doneAt,
                finished);
    }

    /** Whether the other is the same opening with the same place, size, frame and method, however far each has come. */
    public boolean designedLike(Opening other) {
        return id.equals(other.id)
                && facade.equals(other.facade)
                && level == other.level
                && widthMm == other.widthMm
                && heightMm == other.heightMm
                && frame == other.frame
                && method == other.method;
    }

    /** The same opening with its window coming on another date. */
    public Opening deliveredOn(LocalDate date) {
        return new Opening(
                id,
                facade,
                level,
                widthMm,
                heightMm,
                frame,
                method,
                approach,
                secondLayer,
                date,
                waterTest,
                priority,
                done,
                doneAt,
                finished);
    }

    public Course course() {
        return new Course(facade, level);
    }

    public StepList stepList() {
        return StepList.of(method, approach);
    }

    public Variant variant() {
        return new Variant(method, approach, secondLayer);
    }

    /** What all trades tick here. */
    public WorkList workList() {
        return WorkList.of(variant(), waterTest);
    }

    public boolean installed() {
        return stepList().complete(done);
    }

    /** What remains to be planned for this opening, in the order in which it is done. */
    public List<Task> tasks() {
        return designedTasks().stream()
                .filter(task -> task == Task.INSTALL ? !installed() : !finished.contains(task))
                .toList();
    }

    /** Every task that the opening needs from bare wall to cladding, done or not, in order. */
    public List<Task> designedTasks() {
        List<Task> tasks = new ArrayList<>();
        tasks.add(Task.INSTALL);
        if (waterTest) tasks.add(Task.TEST);
        if (!method.barrierFirst() || secondLayer != SecondLayer.NONE) tasks.add(Task.WRAP);
        tasks.add(Task.CLAD);
        return List.copyOf(tasks);
    }
}
