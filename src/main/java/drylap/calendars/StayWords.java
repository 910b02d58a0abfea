package drylap.calendars;

import drylap.kernel.Caution;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.takeoff.TakeOff;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says a stay in words, from the folder as it stands. */
final class StayWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final JobFolder folder;
    private final Plan plan;
    private final Map<OpeningId, Opening> openings;

    StayWords(JobFolder folder, Plan plan) {
        this.folder = folder;
        this.plan = plan;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, Function.identity()));
    }

    Told told(Stay stay) {
        Site site = folder.sites().stream()
                .filter(one -> one.id().equals(stay.key().site()))
                .findFirst()
                .orElseThrow();
        return new Told(
                stay.start(),
                stay.end(),
                "%s: %s".formatted(site.name(), work(stay)),
                site.name(),
                site.place(),
                description(stay, site));
    }

    /** A crew has one trade, so that all its visits are of one task. */
    private static String work(Stay stay) {
        long count = stay.visits().stream().map(Visit::opening).distinct().count();
        return "%s %d opening%s".formatted(stay.visits().getFirst().task().code(), count, count == 1 ? "" : "s");
    }

    private String description(Stay stay, Site site) {
        String visits =
                stay.visits().stream().map(visit -> line(visit, site.zone())).collect(Collectors.joining("\n"));
        String bring = bring(stay).map("\n\nBring: %s"::formatted).orElse("");
        return "%s to %s by the clock of %s\n\n%s%s\n\n%s"
                .formatted(
                        clock(stay.start(), site.zone()),
                        clock(stay.end(), site.zone()),
                        site.zone(),
                        visits,
                        bring,
                        Caution.WORDS);
    }

    private String line(Visit visit, ZoneId zone) {
        Opening opening = Objects.requireNonNull(openings.get(visit.opening()));
        return "%s %s, %s, level %d: %s, method %s, %d × %d mm"
                .formatted(
                        clock(visit.start(), zone),
                        visit.opening(),
                        visit.facade().facade(),
                        visit.level(),
                        visit.task().code(),
                        opening.method().code(),
                        opening.widthMm(),
                        opening.heightMm());
    }

    /** Of what was left to do when it was told; how strips are cut stands on the page My day. */
    private Optional<String> bring(Stay stay) {
        try {
            return TakeOff.ofDay(
                            folder,
                            only(stay),
                            stay.visits().getFirst().crew(),
                            stay.key().date())
                    .filter(load -> !load.isEmpty())
                    .map(load -> "%s; %s. My day tells how to cut the strips."
                            .formatted(load.counts().words(), load.lengths().words()));
        } catch (IllegalArgumentException tooLong) {
            return Optional.of("cannot be said: " + tooLong.getMessage());
        }
    }

    private Plan only(Stay stay) {
        return new Plan(plan.start(), plan.horizonEnd(), stay.visits(), List.of(), List.of(), List.of(), plan.ledger());
    }

    private static String clock(Instant instant, ZoneId zone) {
        return CLOCK.format(instant.atZone(zone));
    }
}
