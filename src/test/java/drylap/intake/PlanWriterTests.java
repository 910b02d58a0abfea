package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.OpenWindow;
import drylap.planning.Plan;
import drylap.planning.PublishedVisit;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanWriterTests {
    static final FacadeId WEST = new FacadeId(new SiteId("S1"), "W");
    static final OpeningId O1 = new OpeningId("O1");
    static final OpeningId O2 = new OpeningId("O2");

    final JobFolder folder = new SmallFolder().sound().folder();
    final Plan plan = new Plan(
            at("2026-04-13T14:00:00Z"),
            at("2026-04-15T00:00:00Z"),
            List.of(
                    visit("C2", 2, O2, Task.CLAD, "2026-04-14T16:00:00Z", "2026-04-14T16:29:00Z"),
                    visit("C1", 1, O2, Task.INSTALL, "2026-04-13T14:32:00Z", "2026-04-13T15:43:00Z")),
            List.of(new UnplannedTask(O1, Task.TEST, UnplannedReason.NO_CREW_TRAINED, "no crew is a tester, \"ever\"")),
            List.of(
                    new CoverNow(O2, null, at("2026-04-13T15:00:00Z"), 40),
                    new CoverNow(O1, at("2026-04-12T22:30:00Z"), at("2026-04-13T15:00:00Z"), 48)),
            List.of(
                    new OpenWindow(
                            WEST, Task.CLAD, new TimeWindow(at("2026-04-13T14:00:00Z"), at("2026-04-13T15:00:00Z"))),
                    new OpenWindow(
                            WEST,
                            Task.INSTALL,
                            new TimeWindow(at("2026-04-13T13:40:00Z"), at("2026-04-13T14:30:00Z")))),
            new Ledger(List.of(new Ledger.Line(LedgerTerm.TRAVEL, 26, 2, 52)), 0, 1000, 52));

    @Test
    void visits_are_sorted_by_crew_and_start_in_the_sites_offset() {
        assertThat(text("visits.csv")).isEqualTo("""
                crew,date,sequence,site,facade,level,opening,task,start,end
                C1,2026-04-13,1,S1,W,1,O2,install,2026-04-13T07:32-07:00,2026-04-13T08:43-07:00
                C2,2026-04-14,2,S1,W,1,O2,clad,2026-04-14T09:00-07:00,2026-04-14T09:29-07:00
                """);
    }

    @Test
    void unplanned_tasks_give_their_reason_in_words() {
        assertThat(text("unplanned.csv")).isEqualTo("""
                opening,task,reason,detail
                O1,test,no crew trained,"no crew is a tester, ""ever""\"
                """);
    }

    @Test
    void cover_now_keeps_the_order_in_which_to_go() {
        assertThat(text("cover_now.csv")).isEqualTo("""
                opening,open_since,next_rain,minutes_to_close
                O2,,2026-04-13T08:00-07:00,40
                O1,2026-04-12T15:30-07:00,2026-04-13T08:00-07:00,48
                """);
    }

    @Test
    void open_hours_are_sorted_by_facade_task_and_time() {
        assertThat(text("open_hours.csv")).isEqualTo("""
                site,facade,task,from,until
                S1,W,install,2026-04-13T06:40-07:00,2026-04-13T07:30-07:00
                S1,W,clad,2026-04-13T07:00-07:00,2026-04-13T08:00-07:00
                """);
    }

    @Test
    void the_ledger_ends_with_its_three_totals() {
        assertThat(text("ledger.csv")).isEqualTo("""
                term,amount,weight,cost
                travel,26,2,52
                hard,,,0
                medium,,,1000
                soft,,,52
                """);
    }

    @Test
    void a_plan_folder_reads_back(@TempDir Path target) throws IOException {
        PlanWriter.write(plan, folder, target);
        try (var files = Files.list(target)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "visits.csv", "unplanned.csv", "cover_now.csv", "open_hours.csv", "ledger.csv");
        }
        assertThat(PlanReader.read(FolderSource.of(target), folder))
                .isEqualTo(new PlanReading.Read<>(new PlanFolder(
                        plan.visits().reversed().stream()
                                .map(visit -> new PublishedVisit(visit, false))
                                .toList(),
                        plan.unplanned(),
                        plan.coverNow(),
                        plan.openHours().reversed(),
                        plan.ledger())));
    }

    @Test
    void the_visits_alone_can_be_planned_from(@TempDir Path target) throws IOException {
        Path file = Files.writeString(target.resolve("last week.csv"), text("visits.csv"));
        assertThat(PlanReader.published(FolderSource.of(file), folder))
                .isInstanceOfSatisfying(
                        PlanReading.Read.class,
                        read -> assertThat((List<?>) read.plan()).hasSize(2));
    }

    @Test
    void a_plan_of_another_folder_is_refused_line_by_line() {
        String visits = text("visits.csv").replace("O2,install", "O9,install").replace("C2,", "C8,");
        assertThat(refusal(Map.of("visits.csv", visits))).isEqualTo("""
                visits.csv:2 opening: refers to no opening (O9) – an opening of openings.csv is accepted
                visits.csv:3 crew: refers to no crew (C8) – a crew of crews.csv is accepted""");
    }

    @Test
    void a_plan_folder_without_visits_is_refused() {
        assertThat(refusal(Map.of()))
                .isEqualTo("visits.csv: is missing – a CSV file with the header "
                        + "crew,date,sequence,site,facade,level,opening,task,start,end,pinned is accepted");
    }

    @Test
    void files_beside_the_visits_may_be_absent_but_not_wrong() {
        Map<String, String> files = Map.of(
                "visits.csv", text("visits.csv"),
                "unplanned.csv", text("unplanned.csv").replace("no crew trained", "no mood"),
                "ledger.csv", "term,amount,weight,cost\ntravel,26,2,52\nhard,,,0\nsoft,,,52\n");
        assertThat(refusal(files)).isEqualTo("""
                unplanned.csv:2 reason: is unknown (no mood) – one of no crew trained, no delivery, \
                no dry window long enough, horizon full, waits for another task, apron limit is accepted
                ledger.csv: has no row medium – a row for each total is accepted""");
    }

    private String refusal(Map<String, String> files) {
        Map<String, byte[]> bytes = new java.util.HashMap<>();
        files.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        var reading = PlanReader.read(FolderSource.inMemory("plan", bytes), folder);
        return ((PlanReading.Refused<PlanFolder>) reading).text();
    }

    private String text(String file) {
        byte[] bytes =
                java.util.Objects.requireNonNull(PlanWriter.files(plan, folder).get(file));
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static Instant at(String time) {
        return Instant.parse(time);
    }

    private static Visit visit(String crew, int sequence, OpeningId opening, Task task, String start, String end) {
        LocalDate date = LocalDate.parse(start.substring(0, 10));
        return new Visit(new CrewId(crew), date, sequence, WEST, 1, opening, task, at(start), at(end));
    }
}
