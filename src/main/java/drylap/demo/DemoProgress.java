package drylap.demo;

import drylap.assembly.Step;
import drylap.assembly.WorkLine;
import drylap.handoff.HandoffAct.WaterTest;
import drylap.handoff.HandoffRequest;
import drylap.handoff.Inspections;
import drylap.handoff.LeakDefinition;
import drylap.handoff.Releases;
import drylap.handoff.Takeovers;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.planning.Visit;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Person;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Does what the sample's plan has done by now, as the sample's people would mark it; invented from end to end. */
@Component
class DemoProgress {
    private static final WaterTest TEST = new WaterTest(LeakDefinition.PAST_INNERMOST_PLANE, 200, 15);

    private final StepLog log;
    private final OpeningStates states;
    private final Releases releases;
    private final Takeovers takeovers;
    private final Inspections inspections;

    DemoProgress(StepLog log, OpeningStates states, Releases releases, Takeovers takeovers, Inspections inspections) {
        this.log = log;
        this.states = states;
        this.releases = releases;
        this.takeovers = takeovers;
        this.inspections = inspections;
    }

    /** @param who someone of each trade who may mark at the site of any visit */
    void work(FolderId folder, List<Visit> visits, Map<Trade, Person> who, Instant now) {
        visits.stream()
                .filter(visit -> visit.start().isBefore(now))
                .sorted(java.util.Comparator.comparing(Visit::start))
                .forEach(visit -> work(folder, visit, who, now));
    }

    private void work(FolderId folder, Visit visit, Map<Trade, Person> who, Instant now) {
        Person worker = who.get(visit.task().trade());
        if (worker == null || !worker.reach().covers(visit.facade().site())) return;
        switch (visit.task()) {
            case INSTALL -> install(folder, visit, worker, now);
            case TEST -> test(folder, visit, who);
            case WRAP, CLAD -> cover(folder, visit, worker, now);
        }
    }

    /** Lines are spread evenly over the visit; one that is still under way has those whose time has come. */
    private void install(FolderId folder, Visit visit, Person worker, Instant now) {
        var state = states.of(worker, folder, visit.opening());
        List<WorkLine> lines = state.list().lines().stream()
                .filter(line -> line.trade() == Trade.WINDOW && line.number().isPresent() && !line.release())
                .filter(line -> !state.done().contains(line.code()))
                .toList();
        Duration each = Duration.between(visit.start(), visit.end()).dividedBy(Math.max(1, lines.size()));
        for (int i = 0; i < lines.size(); i++) {
            Instant at = visit.start().plus(each.multipliedBy(i + 1L));
            if (at.isAfter(now)) return;
            mark(worker, folder, visit.opening(), lines.get(i), at);
        }
        releases.release(worker, request(worker, folder, visit.opening()));
    }

    private void test(FolderId folder, Visit visit, Map<Trade, Person> who) {
        Person window = who.get(Trade.WINDOW);
        Person tester = who.get(Trade.TESTER);
        if (window == null || tester == null) return;
        lineOf(window, folder, visit.opening(), Step.AIR_SEAL)
                .forEach(line -> mark(window, folder, visit.opening(), line, visit.start()));
        inspections.test(tester, request(tester, folder, visit.opening()), TEST, true);
    }

    private void cover(FolderId folder, Visit visit, Person worker, Instant now) {
        if (visit.end().isAfter(now)) return;
        takeovers.accept(worker, request(worker, folder, visit.opening()));
        var next = nextOf(worker, folder, visit);
        while (next.isPresent()) {
            mark(worker, folder, visit.opening(), next.get(), visit.end());
            next = nextOf(worker, folder, visit);
        }
    }

    private Optional<WorkLine> nextOf(Person worker, FolderId folder, Visit visit) {
        return states.of(worker, folder, visit.opening()).next().stream()
                .filter(line -> line.trade() == visit.task().trade())
                .findFirst();
    }

    private List<WorkLine> lineOf(Person who, FolderId folder, OpeningId opening, Step step) {
        return states.of(who, folder, opening).next().stream()
                .filter(line -> line.steps().contains(step))
                .toList();
    }

    private void mark(Person who, FolderId folder, OpeningId opening, WorkLine line, Instant at) {
        log.mark(who, MarkRequest.done(key(folder, opening, line.code()), folder, opening, line.code(), at));
    }

    private HandoffRequest request(Person who, FolderId folder, OpeningId opening) {
        long version = states.of(who, folder, opening).version();
        return new HandoffRequest(
                key(folder, opening, "act " + version), folder, Map.of(opening, version), "", List.of());
    }

    private static UUID key(FolderId folder, OpeningId opening, String what) {
        return UUID.nameUUIDFromBytes(
                "sample %d %s %s".formatted(folder.value(), opening, what).getBytes(StandardCharsets.UTF_8));
    }
}
