package drylap.whatif;

import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import drylap.sites.Site;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A day on which crews do not come: one crew, or all crews of a site, which are those that have no shorter road to another.
 * A pin on such a day holds nothing.
 */
public record DropDay(
        LocalDate date, @Nullable CrewId crew, @Nullable SiteId site) implements Change {
    public DropDay {
        if ((crew == null) == (site == null))
            throw new IllegalArgumentException("a day is dropped for a crew or for the crews of a site, one of both");
    }

    @Override
    public JobFolder applyTo(JobFolder folder) {
        Set<CrewId> away = away(folder);
        boolean comes =
                folder.shifts().stream().anyMatch(shift -> shift.date().equals(date) && away.contains(shift.crew()));
        if (!comes) throw CannotBe.NO_SHIFT.with(crew == null ? Objects.requireNonNull(site) : crew, date);
        return folder.withShifts(folder.shifts().stream()
                        .filter(shift -> !shift.date().equals(date) || !away.contains(shift.crew()))
                        .toList())
                .withPublished(folder.published().stream()
                        .map(one -> released(one, away))
                        .toList());
    }

    private PublishedVisit released(PublishedVisit one, Set<CrewId> away) {
        boolean dropped =
                one.visit().date().equals(date) && away.contains(one.visit().crew());
        return dropped ? new PublishedVisit(one.visit(), false) : one;
    }

    private Set<CrewId> away(JobFolder folder) {
        if (crew != null) return Set.of(crew);
        return folder.crews().stream()
                .filter(one -> nearest(folder, one).equals(site))
                .map(Crew::id)
                .collect(Collectors.toSet());
    }

    private static SiteId nearest(JobFolder folder, Crew crew) {
        return folder.sites().stream()
                .min(Comparator.comparingInt(one -> folder.travel()
                        .minutes(crew.id().value(), crew.base(), one.id().value(), one.place())))
                .map(Site::id)
                .orElseThrow();
    }
}
