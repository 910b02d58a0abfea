package drylap.pace;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.WorkLine;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.LabourRow;
import drylap.planning.LabourTable;
import drylap.progress.Mark;
import drylap.progress.MarkKind;
import drylap.sites.Opening;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** What crews tick who work one opening after the other, and how long they really took. */
final class SimulatedLog {
    static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    static final LabourTable LABOUR = new LabourTable(Arrays.stream(Method.values())
            .map(method -> new LabourRow(
                    Task.INSTALL, method, new BigDecimal(48), new BigDecimal(8), new BigDecimal(12), 20, 10, 5))
            .toList());

    final List<Opening> openings = new ArrayList<>();
    final Map<OpeningId, List<Mark>> log = new LinkedHashMap<>();
    final List<Shift> shifts = new ArrayList<>();
    private final List<Crew> crews = new ArrayList<>();
    private long marks;
    private CrewId crew = new CrewId("none");
    private LocalDate date = MONDAY;
    /** The crew's watch. */
    Instant now = Instant.EPOCH;

    InstallTimes times() {
        return InstallTimes.of(openings, log, crews, shifts, LABOUR);
    }

    SimulatedLog day(String of, LocalDate on) {
        crew = new CrewId(of);
        date = on;
        now = on.atTime(7, 0).atZone(ZONE).toInstant();
        if (crews.stream().noneMatch(one -> one.id().equals(crew)))
            crews.add(new Crew(crew, Trade.WINDOW, Set.of(), new GeoPoint(47.6, -122.3), ZONE));
        shifts.add(new Shift(
                crew, on, LocalTime.of(7, 0), LocalTime.of(17, 0), LocalTime.NOON, LocalTime.of(12, 30), null, ZONE));
        return this;
    }

    Opening opening(Method method, int widthMm) {
        var opening = new Opening(
                new OpeningId("o" + openings.size()),
                new FacadeId(new SiteId("S"), "W-" + crew),
                1,
                widthMm,
                1500,
                Frame.VINYL,
                method,
                Approach.DRAINAGE,
                SecondLayer.NONE,
                MONDAY,
                false,
                0,
                0,
                null);
        openings.add(opening);
        return opening;
    }

    /** Accepts the opening, then ticks each line of its block when it is done, all after equally long work. */
    Opening installed(Method method, int widthMm, double minutes) {
        var opening = opening(method, widthMm);
        var lines = block(opening);
        tick(opening, "RO");
        for (String line : lines) {
            work(minutes / lines.size());
            tick(opening, line);
        }
        work(4);
        return opening;
    }

    static List<String> block(Opening opening) {
        return opening.workList().lines().stream()
                .filter(WorkLine::installBlock)
                .map(WorkLine::code)
                .toList();
    }

    /** Nobody works in the break. */
    void work(double minutes) {
        Instant noon = date.atTime(12, 0).atZone(ZONE).toInstant();
        Instant end = now.plusMillis(Math.round(minutes * 60_000));
        now = !now.isAfter(noon) && end.isAfter(noon) ? end.plus(Duration.ofMinutes(30)) : end;
    }

    void tick(Opening opening, String line) {
        add(opening, line, MarkKind.DONE, crew);
    }

    void add(Opening opening, String line, MarkKind kind, CrewId by) {
        log.computeIfAbsent(opening.id(), _ -> new ArrayList<>())
                .add(new Mark(
                        ++marks,
                        opening.id(),
                        line,
                        kind,
                        new PersonId(1),
                        "P",
                        by,
                        now,
                        now.plusSeconds(5),
                        UUID.randomUUID(),
                        null,
                        kind == MarkKind.UNDONE ? "slipped" : null,
                        List.of()));
    }
}
