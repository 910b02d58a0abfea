package drylap.planning;

import drylap.crews.Absences;
import drylap.crews.Shift;
import drylap.crews.ShiftsLeft;
import drylap.forecasts.KeptForecasts;
import drylap.kernel.Course;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.Task;
import drylap.progress.FinishedTask;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** A job folder as it stands by now: as imported, with all that was done and decided since. */
@Service
public final class CurrentFolders {
    private final JobFolders folders;
    private final OpeningStates states;
    private final Publications publications;
    private final Plans plans;
    private final Pins pins;
    private final Absences absences;
    private final ChangedRules rules;
    private final ChangedLabour labour;
    private final KeptForecasts forecasts;
    private final Clock clock;

    CurrentFolders(
            JobFolders folders,
            OpeningStates states,
            Publications publications,
            Plans plans,
            Pins pins,
            Absences absences,
            ChangedRules rules,
            ChangedLabour labour,
            KeptForecasts forecasts,
            Clock clock) {
        this.folders = folders;
        this.states = states;
        this.publications = publications;
        this.plans = plans;
        this.pins = pins;
        this.absences = absences;
        this.rules = rules;
        this.labour = labour;
        this.forecasts = forecasts;
        this.clock = clock;
    }

    /** All of it, for work that acts for nobody. */
    public JobFolder load(FolderId id) {
        return standing(id, folders.load(id), states.states(id), Reach.EVERYWHERE);
    }

    /**
     * What of it lies at the person's sites.
     *
     * @throws NotAllowed where the person sees only the folder in work, and it is another one
     */
    public JobFolder load(Person who, FolderId id) {
        demandSight(who, id);
        return standing(id, folders.load(id, who.reach()), states.of(who, id), who.reach());
    }

    void demandSight(Person who, FolderId id) {
        who.demand(Operation.SEE_OPENINGS);
        if (!who.may(Operation.SEE_FOLDERS)
                && !publications.inWork().filter(id::equals).isPresent())
            throw new NotAllowed(who, Operation.SEE_OPENINGS, "in job folder " + id.value());
    }

    /** The one place where later changes are laid over what was imported. */
    private JobFolder standing(FolderId id, JobFolder imported, List<OpeningState> states, Reach reach) {
        Map<OpeningId, OpeningState> now = states.stream()
                .collect(Collectors.toMap(state -> state.opening().id(), Function.identity()));
        List<Opening> openings = imported.openings().stream()
                .map(opening -> standing(opening, Objects.requireNonNull(now.get(opening.id()))))
                .toList();
        JobFolder folder = imported.withOpenings(openings)
                .withShifts(ShiftsLeft.of(imported.shifts(), absences.of(id)))
                .withRules(rules.of(id, reach))
                .withLabour(labour.over(id, imported.labour()))
                .withForecasts(forecasts.over(imported.sites(), imported.forecasts()));
        var away = crewDays(imported);
        away.removeAll(crewDays(folder));
        var held = pins.of(id);
        List<PublishedVisit> published = published(id, folder, held, reach).stream()
                .map(one -> heldByACrewThatComes(one, away))
                .filter(one -> stillThere(one.visit(), now))
                .toList();
        Stream<PublishedVisit> more =
                newlyHeld(id, folder, held, published).filter(one -> !away.contains(CrewDay.of(one.visit())));
        return folder.withPublished(Stream.concat(published.stream(), more).toList());
    }

    private record CrewDay(CrewId crew, LocalDate date) {
        static CrewDay of(Shift shift) {
            return new CrewDay(shift.crew(), shift.date());
        }

        static CrewDay of(Visit visit) {
            return new CrewDay(visit.crew(), visit.date());
        }
    }

    /** A window schedule may have moved an opening to another wall or level: its visits there are planned anew. */
    private static boolean stillThere(Visit visit, Map<OpeningId, OpeningState> now) {
        OpeningState state = now.get(visit.opening());
        return state != null && state.opening().course().equals(new Course(visit.facade(), visit.level()));
    }

    private static Set<CrewDay> crewDays(JobFolder folder) {
        return folder.shifts().stream().map(CrewDay::of).collect(Collectors.toCollection(HashSet::new));
    }

    /** A pin on a day on which its crew is away holds nothing: the visit is planned anew. */
    private static PublishedVisit heldByACrewThatComes(PublishedVisit one, Set<CrewDay> away) {
        return away.contains(CrewDay.of(one.visit())) ? new PublishedVisit(one.visit(), false) : one;
    }

    private static Opening standing(Opening opening, OpeningState state) {
        return opening.standing(
                state.doneUpTo(),
                state.doneUpToAt(),
                state.finished().stream()
                        .map(FinishedTask::task)
                        .filter(task -> task != Task.INSTALL)
                        .collect(Collectors.toSet()));
    }

    private List<PublishedVisit> published(
            FolderId id, JobFolder folder, Map<Pins.Pinned, Pins.Place> held, Reach reach) {
        Set<Pins.Pinned> toDo = toDo(folder);
        var publication = publications.latest(id);
        if (publication.isEmpty())
            return folder.published().stream()
                    .map(one -> held(one, held.get(Pins.Pinned.of(one.visit()))))
                    .toList();
        Instant now = clock.instant();
        return plans.load(publication.get().plan(), reach).plan().visits().stream()
                .filter(visit -> toDo.contains(Pins.Pinned.of(visit)))
                .map(visit -> new PublishedVisit(visit, false))
                .map(one -> held(one, held.get(Pins.Pinned.of(one.visit()))))
                // what has begun or slipped is planned anew, its pin with it, and that is no change of plan
                .filter(one -> !one.visit().start().isBefore(now))
                .toList();
    }

    private static Set<Pins.Pinned> toDo(JobFolder folder) {
        return folder.openings().stream()
                .flatMap(opening -> opening.tasks().stream().map(task -> new Pins.Pinned(opening.id(), task)))
                .collect(Collectors.toSet());
    }

    /** Pinned in a proposal: nobody has published it yet, but the next plans keep it all the same. */
    private Stream<PublishedVisit> newlyHeld(
            FolderId id, JobFolder folder, Map<Pins.Pinned, Pins.Place> held, List<PublishedVisit> published) {
        Set<Pins.Pinned> free = toDo(folder);
        published.forEach(one -> free.remove(Pins.Pinned.of(one.visit())));
        Instant now = clock.instant();
        boolean running = publications.latest(id).isPresent()
                || folder.shifts().stream().anyMatch(shift -> shift.limit().isAfter(now));
        return folder.openings().stream()
                .flatMap(opening -> opening.tasks().stream()
                        .map(task -> new Pins.Pinned(opening.id(), task))
                        .filter(free::contains)
                        .filter(held::containsKey)
                        .map(pinned -> Objects.requireNonNull(held.get(pinned)).holding(opening, pinned.task()))
                        .filter(one -> !running || !one.visit().start().isBefore(now)));
    }

    private static PublishedVisit held(PublishedVisit one, Pins.@Nullable Place place) {
        if (place == null) return one;
        return place.holding(one.visit());
    }
}
