package drylap.ui.drawn;

import drylap.forecasts.SourceAges.Age;
import drylap.planning.EndedRuns.Ended;
import drylap.platform.JobStatus;
import drylap.platform.WorkState.Line;
import drylap.speech.Saying;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How Drylap runs, and what whoever looks after it should do.
 *
 * @param wrong what is wrong, each with what to do; empty: nothing that Drylap knows of
 * @param facts what else there is to know
 */
public record MachineSheet(List<Saying> wrong, List<Saying> facts, List<Line> jobs, List<Age> sources) {
    private static final Duration WAITS_LONG = Duration.ofMinutes(10);
    private static final Duration SILENT = Duration.ofMinutes(1);
    private static final Duration OLD_FORECAST = Duration.ofHours(24);
    private static final long GIB = 1L << 30;
    private static final long MIB = 1L << 20;
    private static final long LITTLE_ROOM = 2 * GIB;

    /**
     * @param databaseBytes on its disk
     * @param freeBytes where the data are; none where the database is on a machine of its own
     */
    public record Found(
            Instant now,
            List<Line> jobs,
            List<Age> sources,
            Optional<Ended> lastRun,
            long databaseBytes,
            OptionalLong freeBytes,
            String version) {}

    public static MachineSheet of(Found found) {
        List<Saying> wrong = new ArrayList<>();
        jobs(found, wrong);
        found.sources().forEach(age -> source(age, found.now(), wrong));
        found.freeBytes().stream()
                .filter(free -> free < LITTLE_ROOM)
                .mapToObj(free -> Saying.of(
                        "Only {0} MB are free where the data are. Make room: on a full disk nothing can be marked.",
                        free / MIB))
                .forEach(wrong::add);
        return new MachineSheet(List.copyOf(wrong), facts(found), found.jobs(), found.sources());
    }

    private static void jobs(Found found, List<Saying> wrong) {
        long failed = found.jobs().stream()
                .filter(job -> job.status() == JobStatus.FAILED)
                .count();
        if (failed > 0)
            wrong.add(Saying.of(
                    "Jobs that failed this week: {0}. Below is why; ask for them again on their page.", failed));
        boolean anyRuns = found.jobs().stream().anyMatch(job -> job.status() == JobStatus.RUNNING);
        boolean waits = found.jobs().stream()
                .anyMatch(job -> job.status() == JobStatus.QUEUED && longAgo(job.askedAt(), WAITS_LONG, found));
        if (waits && !anyRuns)
            wrong.add(Saying.of(
                    "Jobs wait and nobody does them. See that a node works: {0} above 0, or {1}.",
                    "DRYLAP_WORK_THREADS", "./drylap worker"));
        found.jobs().stream()
                .filter(job -> job.status() == JobStatus.RUNNING)
                .filter(job -> job.heartbeat() != null && longAgo(job.heartbeat(), SILENT, found))
                .forEach(job -> wrong.add(Saying.of(
                        "Job {0} is with a node that is silent. Another one takes it over; see whether {1} still runs.",
                        Long.toString(job.id()), String.valueOf(job.node()))));
    }

    private static void source(Age age, Instant now, List<Saying> wrong) {
        if (age.newest() == null)
            wrong.add(Saying.of(
                    "Nothing was ever fetched from {0}. A scheduler sees why under Open hours, at each site; is there a way to the internet?",
                    age.source().words()));
        else if (age.newest().plus(OLD_FORECAST).isBefore(now))
            wrong.add(Saying.of(
                    "The newest forecast of {0} is {1} h old. A scheduler sees why under Open hours, at each site.",
                    age.source().words(), Duration.between(age.newest(), now).toHours()));
    }

    private static boolean longAgo(Instant at, Duration than, Found found) {
        return at.plus(than).isBefore(found.now());
    }

    private static List<Saying> facts(Found found) {
        List<Saying> facts = new ArrayList<>();
        facts.add(Saying.of("Version {0}", found.version()));
        facts.add(Saying.of("The database takes {0} MB.", found.databaseBytes() / MIB));
        facts.add(
                found.freeBytes().isPresent()
                        ? Saying.of(
                                "Free where the data are: {0} GB",
                                found.freeBytes().getAsLong() / GIB)
                        : Saying.of("The database is on a machine of its own: what is free there is seen there."));
        facts.add(found.lastRun().map(MachineSheet::speed).orElse(Saying.of("Nothing was planned yet.")));
        facts.add(Saying.of(
                "Backups are files that {0} writes; Drylap does not know where they are, nor how old.",
                "./drylap backup"));
        return List.copyOf(facts);
    }

    private static Saying speed(Ended last) {
        long seconds = Math.max(1, last.progress().elapsed().toSeconds());
        return Saying.of(
                "The last plan: {0} moves a second for {1} s; {2} tasks planned, {3} left out",
                last.progress().moves() / seconds,
                seconds,
                last.progress().planned(),
                last.progress().unplanned());
    }
}
