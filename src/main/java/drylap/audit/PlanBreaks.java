package drylap.audit;

import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the facts by now (work done or taken back, weather, absences) break of the plan that people work by. It judges
 * rules of planning and never says that work at height is safe.
 *
 * @param broken rules that the visits still ahead break, in the audit's order
 * @param slipped visits whose end has passed and whose task is not done
 */
public record PlanBreaks(List<Broken> broken, List<Visit> slipped) {
    /** @param visit absent where the breach is of a crew's whole day */
    public record Broken(@Nullable Visit visit, Breach breach) {}

    public PlanBreaks {
        broken = List.copyOf(broken);
        slipped = List.copyOf(slipped);
    }

    /** @param folder as it stands by now; a visit whose task is done breaks nothing */
    public static PlanBreaks of(JobFolder folder, List<Visit> published, Instant now) {
        Map<OpeningId, Opening> openings =
                folder.openings().stream().collect(Collectors.toMap(Opening::id, opening -> opening));
        List<Visit> ahead = new ArrayList<>();
        List<Visit> slipped = new ArrayList<>();
        for (Visit visit : published) {
            Opening opening = openings.get(visit.opening());
            if (opening != null && !JobBook.needs(opening).contains(visit.task())) continue;
            (visit.end().isAfter(now) ? ahead : slipped).add(visit);
        }
        return new PlanBreaks(broken(folder, ahead, now, openings), slipped);
    }

    private static List<Broken> broken(
            JobFolder folder, List<Visit> ahead, Instant now, Map<OpeningId, Opening> openings) {
        Findings words = new Findings(new JobBook(folder, now));
        Map<Saying, Visit> byPlace = new HashMap<>();
        for (Visit visit : ahead) byPlace.put(words.where(visit), visit);
        WorkMinutes minutes = new WorkMinutes(folder.labour().rows());
        return Audit.of(folder, new ClaimedPlan(ahead, null, null, null, null), now).breaches().stream()
                .map(breach -> new Broken(byPlace.get(breach.where()), breach))
                .filter(broken -> counts(broken, minutes, openings))
                .toList();
    }

    /** Neither being under way nor lasting longer than what is left breaks a plan; pins bind planners, not the day. */
    private static boolean counts(Broken broken, WorkMinutes minutes, Map<OpeningId, Opening> openings) {
        return switch (broken.breach().rule()) {
            case START, PINNED -> false;
            case MINUTES -> broken.visit() == null || tooShort(broken.visit(), minutes, openings);
            default -> broken.breach().rule().hard();
        };
    }

    private static boolean tooShort(Visit visit, WorkMinutes minutes, Map<OpeningId, Opening> openings) {
        int needed = minutes.of(Objects.requireNonNull(openings.get(visit.opening())), visit.task());
        return Duration.between(visit.start(), visit.end()).toMinutes() < needed;
    }

    public boolean none() {
        return broken.isEmpty() && slipped.isEmpty();
    }
}
