package drylap.planning;

import static drylap.persistence.jooq.Tables.PLANNING_RUN;
import static drylap.persistence.jooq.Tables.RUN_WAYPOINT;
import static org.jooq.impl.DSL.select;

import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.persistence.jooq.tables.records.RunWaypointRecord;
import drylap.planning.Waypoint.Day;
import drylap.planning.Waypoint.Turn;
import drylap.platform.JobId;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import tools.jackson.databind.json.JsonMapper;

/** Where the searches of runs under way stand, in the database, so that another node can go on. */
@Service
final class RunWaypoints {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final DSLContext db;
    private final Clock clock;

    RunWaypoints(DSLContext db, Clock clock) {
        this.db = db;
        this.clock = clock;
    }

    /** Days and turns as short rows: there are thousands of them. */
    private record Place(List<List<String>> days, List<List<String>> turns) {}

    Optional<KeptWaypoint> of(JobId run) {
        return db.selectFrom(RUN_WAYPOINT)
                .where(RUN_WAYPOINT.JOB_ID.eq(run.value()))
                .fetchOptional(RunWaypoints::read);
    }

    /** In the place of what was kept before. */
    void keep(JobId run, KeptWaypoint now) {
        var row = new RunWaypointRecord(
                run.value(),
                clock.instant(),
                now.elapsed().toMillis(),
                now.moves(),
                now.place().medium(),
                now.place().soft(),
                written(now.place()));
        db.insertInto(RUN_WAYPOINT)
                .set(row)
                .onConflict(RUN_WAYPOINT.JOB_ID)
                .doUpdate()
                .set(row)
                .execute();
    }

    /** The search has gone on and has found nothing better. */
    void note(JobId run, Duration elapsed, long moves) {
        db.update(RUN_WAYPOINT)
                .set(RUN_WAYPOINT.ELAPSED_MS, elapsed.toMillis())
                .set(RUN_WAYPOINT.MOVES, moves)
                .where(RUN_WAYPOINT.JOB_ID.eq(run.value()))
                .execute();
    }

    void forget(JobId run) {
        db.deleteFrom(RUN_WAYPOINT).where(RUN_WAYPOINT.JOB_ID.eq(run.value())).execute();
    }

    /** Of runs that ended without a word, as those do that a newer one takes the place of. */
    void forgetAll(FolderId folder) {
        db.deleteFrom(RUN_WAYPOINT)
                .where(RUN_WAYPOINT.JOB_ID.in(select(PLANNING_RUN.JOB_ID)
                        .from(PLANNING_RUN)
                        .where(PLANNING_RUN.FOLDER_ID.eq(folder.value()))))
                .execute();
    }

    private static String written(Waypoint place) {
        List<List<String>> days = place.days().stream()
                .map(day -> List.of(
                        Integer.toString(day.region()),
                        day.crew().value(),
                        day.date().toString()))
                .toList();
        List<List<String>> turns = place.turns().stream().map(RunWaypoints::row).toList();
        return JSON.writeValueAsString(new Place(days, turns));
    }

    private static List<String> row(Turn turn) {
        Instant wait = turn.notBefore();
        return Stream.concat(
                        Stream.of(
                                Integer.toString(turn.region()),
                                turn.crew().value(),
                                turn.task().code(),
                                wait == null ? "" : wait.toString()),
                        turn.openings().stream().map(OpeningId::value))
                .toList();
    }

    private static KeptWaypoint read(RunWaypointRecord row) {
        Place place = JSON.readValue(row.getPlace(), Place.class);
        return new KeptWaypoint(
                Duration.ofMillis(row.getElapsedMs()),
                row.getMoves(),
                new Waypoint(
                        row.getMedium(),
                        row.getSoft(),
                        place.days().stream().map(RunWaypoints::day).toList(),
                        place.turns().stream().map(RunWaypoints::turn).toList()));
    }

    private static Day day(List<String> row) {
        return new Day(Integer.parseInt(row.get(0)), new CrewId(row.get(1)), LocalDate.parse(row.get(2)));
    }

    private static Turn turn(List<String> row) {
        return new Turn(
                Integer.parseInt(row.get(0)),
                new CrewId(row.get(1)),
                row.subList(4, row.size()).stream().map(OpeningId::new).toList(),
                Coded.of(Task.class, row.get(2)),
                row.get(3).isEmpty() ? null : Instant.parse(row.get(3)));
    }
}
