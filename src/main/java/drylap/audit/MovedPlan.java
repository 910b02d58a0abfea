package drylap.audit;

import drylap.audit.PlanBreaks.Broken;
import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.Visit;
import drylap.speech.Saying;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The visits of a plan, sorted and numbered as a sheet is, with the folder that they are judged by. */
record MovedPlan(JobFolder folder, List<Visit> visits) {
    private record CrewDate(CrewId crew, LocalDate date) {}

    MovedPlan {
        visits = numbered(visits);
    }

    static ZoneId zoneOf(JobBook book, CrewId crew) {
        return book.crew(crew).map(Crew::zone).orElse(ZoneOffset.UTC);
    }

    private static List<Visit> numbered(List<Visit> visits) {
        Map<CrewDate, Integer> numbers = new HashMap<>();
        List<Visit> sheet = new ArrayList<>();
        visits.stream()
                .sorted(Comparator.comparing(Visit::crew)
                        .thenComparing(Visit::start)
                        .thenComparing(Visit::sequence))
                .forEach(one -> sheet.add(
                        withNumber(one, numbers.merge(new CrewDate(one.crew(), one.date()), 1, Integer::sum))));
        return List.copyOf(sheet);
    }

    private static Visit withNumber(Visit one, int sequence) {
        return new Visit(
                one.crew(),
                one.date(),
                sequence,
                one.facade(),
                one.level(),
                one.opening(),
                one.task(),
                one.start(),
                one.end());
    }

    Judged judged(@Nullable Instant now) {
        Findings words = new Findings(new JobBook(folder, now));
        Map<Saying, Visit> byPlace = new HashMap<>();
        visits.forEach(visit -> byPlace.put(words.where(visit), visit));
        AuditReport report = Audit.of(folder, new ClaimedPlan(visits, null, null, null, null), now);
        return new Judged(
                report.breaches().stream()
                        .filter(breach -> breach.rule().hard())
                        .map(breach -> new Broken(byPlace.get(breach.where()), breach))
                        .toList(),
                report.ledger());
    }

    /** What the audit found, ready to be laid beside another finding of the same plan. */
    record Judged(List<Broken> broken, Ledger ledger) {
        /** A rule at a task, wherever the task lies; or at a crew's day. */
        private record Place(ContractRule rule, Object at) {
            static Place of(Broken broken) {
                Visit visit = broken.visit();
                return new Place(
                        broken.breach().rule(), visit == null ? broken.breach().where() : TaskKey.of(visit));
            }
        }

        /**
         * What is broken there and not here. The moved visit answers for its new place: only what breaks there in the very
         * same words as before is not laid to it.
         */
        List<Broken> brokenIn(Judged after, Visit moved) {
            Set<Place> places = places();
            Set<String> words = broken.stream().map(Judged::said).collect(Collectors.toSet());
            return after.broken.stream()
                    .filter(one -> !places.contains(Place.of(one)) || isOf(one, moved) && !words.contains(said(one)))
                    .toList();
        }

        List<Broken> mendedOf(Judged before) {
            Set<Place> places = places();
            return before.broken.stream()
                    .filter(one -> !places.contains(Place.of(one)))
                    .toList();
        }

        private Set<Place> places() {
            return broken.stream().map(Place::of).collect(Collectors.toSet());
        }

        private static boolean isOf(Broken broken, Visit moved) {
            return broken.visit() != null && TaskKey.of(broken.visit()).equals(TaskKey.of(moved));
        }

        private static String said(Broken broken) {
            return broken.breach().rule()
                    + Place.of(broken).toString()
                    + broken.breach().what();
        }
    }
}
