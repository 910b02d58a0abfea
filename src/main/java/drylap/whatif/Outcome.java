package drylap.whatif;

import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Facade;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What came of a scenario: its folder and its plan. */
public record Outcome(String name, JobFolder folder, Plan plan) {
    /**
     * When a facade is handed over.
     *
     * @param cladBy the end of its last cladding; null where some of it is not planned, or none is left to do
     */
    public record Handover(
            FacadeId facade,
            @Nullable LocalDate due,
            @Nullable Instant cladBy,
            int notPlanned) {}

    public List<Handover> handovers() {
        return folder.facades().stream().map(this::handover).toList();
    }

    private Handover handover(Facade facade) {
        int left = Math.toIntExact(folder.openings().stream()
                .filter(one -> one.facade().equals(facade.id()))
                .filter(one -> plan.unplanned().stream()
                        .anyMatch(task ->
                                task.task() == Task.CLAD && task.opening().equals(one.id())))
                .count());
        Optional<Instant> last = plan.visits().stream()
                .filter(visit -> visit.task() == Task.CLAD && visit.facade().equals(facade.id()))
                .map(Visit::end)
                .max(Comparator.naturalOrder());
        return new Handover(facade.id(), facade.handoverDue(), left > 0 ? null : last.orElse(null), left);
    }

    /** What a term of the ledger costs. */
    public long cost(LedgerTerm term) {
        return plan.ledger().lines().stream()
                .filter(line -> line.term() == term)
                .mapToLong(line -> line.cost())
                .sum();
    }

    /** Days on which a crew comes out. */
    public long crewDays() {
        return plan.visits().stream()
                .map(visit -> List.of(visit.crew(), visit.date()))
                .distinct()
                .count();
    }
}
