package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Publication;
import drylap.planning.PublicationId;
import drylap.planning.StoredFolder;
import drylap.planning.StoredPlan;
import drylap.speech.Speech;
import drylap.ui.QuayFolder;
import drylap.ui.drawn.BrokenVisits;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChoice;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** How often what the day broke is worked out, by a stopwatch on which each look takes a second. */
class BreaksDeskTests {
    private static final Instant MONDAY = Instant.parse("2026-04-13T13:00:00Z");

    private final AtomicLong nanos = new AtomicLong();
    private final BreaksDesk desk = new BreaksDesk(
            Clock.fixed(MONDAY, ZoneOffset.UTC),
            () -> nanos.addAndGet(Duration.ofSeconds(1).toNanos()));
    private final JobFolder quay = new QuayFolder().folder();
    private final Plan plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);

    private FolderShown shown(JobFolder folder) {
        var stored = new StoredFolder(new FolderId(1), "quay", MONDAY, 2, 5);
        var publication = new Publication(new PublicationId(1), new FolderId(1), new PlanId(1), MONDAY, "Ines");
        return new FolderShown(
                stored, folder, new PlanChoice(new StoredPlan(new PlanId(1), MONDAY, plan), publication, plan, false));
    }

    private Optional<BrokenVisits> workOut(FolderShown shown) {
        return desk.workOut(Speech.ENGLISH, shown, Reach.EVERYWHERE);
    }

    @Test
    void of_changes_that_come_faster_than_they_can_be_judged_most_are_passed_over_and_the_last_never() {
        FolderShown first = shown(quay);
        FolderShown marked = shown(quay.withOpenings(quay.openings().stream()
                .map(opening -> opening.standing(1, MONDAY, Set.of()))
                .toList()));
        var judged = workOut(first);
        assertThat(judged).isPresent();

        assertThat(workOut(marked)).isEmpty();
        assertThat(desk.lately(Speech.ENGLISH, marked, Reach.EVERYWHERE)).isEqualTo(judged);
        assertThat(workOut(first)).isEqualTo(judged);

        nanos.addAndGet(Duration.ofMinutes(1).toNanos());
        assertThat(workOut(marked)).isPresent();
        assertThat(desk.atHand(Speech.ENGLISH, marked, Reach.EVERYWHERE)).isPresent();
    }

    @Test
    void where_nothing_is_published_nothing_is_broken() {
        var stored = new StoredFolder(new FolderId(1), "quay", MONDAY, 2, 5);
        assertThat(workOut(new FolderShown(stored, quay, PlanChoice.NONE))).contains(BrokenVisits.NONE);
    }
}
