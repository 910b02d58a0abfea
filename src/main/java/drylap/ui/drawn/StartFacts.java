package drylap.ui.drawn;

import drylap.crews.Crew;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Role;
import drylap.sites.Site;
import drylap.ui.drawn.StartSheet.Step;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a start page is worked out from.
 *
 * @param shown the job folder of one's own; none where there is none yet, or the asker may see none
 * @param planning whether a run is under way
 * @param roles of everybody who may sign in, the sample's people apart
 */
public record StartFacts(Person who, @Nullable FolderShown shown, boolean planning, Set<Role> roles, Instant now) {
    /** Whether it is this person's to do, or to see to. */
    boolean concerns(Step step) {
        return switch (step) {
            case PLANNER -> who.may(Operation.CHANGE_PEOPLE) && !who.may(Operation.PROPOSE_PLAN);
            case ACCOUNTS -> who.may(Operation.CHANGE_PEOPLE);
            default -> who.may(Operation.SEE_FOLDERS);
        };
    }

    boolean done(Step step) {
        return switch (step) {
            case SITE -> !sites().isEmpty();
            case WALLS -> !sites().isEmpty() && withoutWalls().isEmpty();
            case OPENINGS -> openings() > 0;
            case CREWS -> crews() > 0 && lacking().isEmpty();
            case FORECAST -> !sites().isEmpty() && withoutForecast().isEmpty();
            case PLAN -> planned() || published();
            case PUBLISHED -> published();
            case PLANNER -> roles.contains(Role.SCHEDULER) || roles.contains(Role.CONTRACTOR);
            case ACCOUNTS -> roles.stream().anyMatch(Role::inCrew);
        };
    }

    List<Site> sites() {
        return shown == null ? List.of() : shown.folder().sites();
    }

    int walls() {
        return shown == null ? 0 : shown.folder().facades().size();
    }

    int openings() {
        return shown == null ? 0 : shown.folder().openings().size();
    }

    List<Site> withoutWalls() {
        return sites().stream()
                .filter(site -> folder().facades().stream()
                        .noneMatch(wall -> wall.id().site().equals(site.id())))
                .toList();
    }

    List<Site> withoutOpenings() {
        return sites().stream()
                .filter(site -> folder().openings().stream()
                        .noneMatch(one -> one.facade().site().equals(site.id())))
                .toList();
    }

    List<Site> withoutForecast() {
        return sites().stream().filter(site -> !forecast(site.id())).toList();
    }

    private boolean forecast(SiteId site) {
        return folder().forecast(site).end().isAfter(now);
    }

    /** Those with a day that is not over. */
    long crews() {
        return shown == null ? 0 : folder().crews().stream().filter(this::comes).count();
    }

    private boolean comes(Crew crew) {
        return folder().shifts().stream()
                .anyMatch(
                        shift -> shift.crew().equals(crew.id()) && shift.limit().isAfter(now));
    }

    /** Trades that what is left to do needs and that nobody comes for; before there are openings, whoever sets windows. */
    Set<Trade> lacking() {
        Set<Trade> needed = EnumSet.noneOf(Trade.class);
        if (shown == null || openings() == 0) needed.add(Trade.WINDOW);
        else
            folder().openings().stream()
                    .flatMap(opening -> opening.tasks().stream())
                    .map(Task::trade)
                    .forEach(needed::add);
        if (shown != null)
            folder().crews().stream().filter(this::comes).map(Crew::trade).forEach(needed::remove);
        return needed;
    }

    boolean planned() {
        return shown != null && shown.choice().newest() != null;
    }

    boolean published() {
        return shown != null && shown.choice().publication() != null;
    }

    /** Whether a plan can be asked for: there is something to do and somebody who comes. */
    public boolean mayPlan() {
        return openings() > 0 && crews() > 0 && !planning;
    }

    private JobFolder folder() {
        return java.util.Objects.requireNonNull(shown).folder();
    }
}
