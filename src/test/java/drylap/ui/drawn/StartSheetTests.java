package drylap.ui.drawn;

import static drylap.ui.drawn.StartSheet.Standing.DONE;
import static drylap.ui.drawn.StartSheet.Standing.LATER;
import static drylap.ui.drawn.StartSheet.Standing.NEXT;
import static drylap.ui.drawn.StartSheet.Standing.OPTIONAL;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.crews.Crew;
import drylap.crews.TravelTimes;
import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Rules;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.PlanId;
import drylap.planning.Publication;
import drylap.planning.PublicationId;
import drylap.planning.StandardLabour;
import drylap.planning.StoredFolder;
import drylap.security.Person;
import drylap.security.Role;
import drylap.ui.QuayFolder;
import drylap.ui.drawn.StartSheet.Line;
import drylap.ui.drawn.StartSheet.Standing;
import drylap.ui.drawn.StartSheet.Step;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class StartSheetTests {
    private static final Instant BEFORE = Instant.parse("2026-04-10T12:00:00Z");
    private static final Instant LONG_AFTER = Instant.parse("2027-01-01T12:00:00Z");
    private static final JobFolder QUAY = new QuayFolder().folder();

    private static Person person(Role role) {
        return new Person(new PersonId(1), "p", "P", role, Reach.EVERYWHERE, null, false);
    }

    private static StartSheet sheet(@Nullable JobFolder folder, PlanChoice choice, boolean planning, Instant now) {
        FolderShown shown = folder == null
                ? null
                : new FolderShown(
                        new StoredFolder(
                                new FolderId(1),
                                "own",
                                BEFORE,
                                folder.sites().size(),
                                folder.openings().size()),
                        folder,
                        choice);
        return StartSheet.of(new StartFacts(person(Role.SCHEDULER), shown, planning, Set.of(Role.SCHEDULER), now));
    }

    private static Line line(StartSheet sheet, Step step) {
        return sheet.lines().stream()
                .filter(one -> one.step() == step)
                .findFirst()
                .orElseThrow();
    }

    private static List<Standing> standings(StartSheet sheet) {
        return sheet.lines().stream().map(Line::standing).toList();
    }

    private static JobFolder sitesOnly() {
        return new JobFolder(
                QUAY.sites(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new TravelTimes(Map.of()),
                List.of(),
                StandardLabour.TABLE,
                Rules.STANDARD,
                List.of());
    }

    @Test
    void with_nothing_there_the_site_is_next_and_all_else_later() {
        StartSheet sheet = sheet(null, PlanChoice.NONE, false, BEFORE);

        assertThat(sheet.lines())
                .extracting(Line::step)
                .containsExactly(
                        Step.SITE, Step.WALLS, Step.OPENINGS, Step.CREWS, Step.FORECAST, Step.PLAN, Step.PUBLISHED);
        assertThat(standings(sheet)).containsExactly(NEXT, LATER, LATER, LATER, OPTIONAL, LATER, LATER);
        assertThat(sheet.complete()).isFalse();
    }

    @Test
    void a_site_without_walls_is_named() {
        StartSheet sheet = sheet(sitesOnly(), PlanChoice.NONE, false, BEFORE);

        assertThat(standings(sheet)).startsWith(DONE, NEXT, LATER);
        assertThat(line(sheet, Step.WALLS).said().words())
                .contains("No wall yet at", QUAY.sites().getFirst().name());
    }

    @Test
    void every_trade_that_the_openings_need_must_come() {
        List<Crew> setters = QUAY.crews().stream()
                .filter(crew -> crew.trade() == Trade.WINDOW)
                .toList();
        assertThat(line(sheet(QUAY, PlanChoice.NONE, false, BEFORE), Step.CREWS).standing())
                .isEqualTo(DONE);

        StartSheet sheet = sheet(QUAY.withCrews(setters), PlanChoice.NONE, false, BEFORE);

        assertThat(line(sheet, Step.CREWS).standing()).isEqualTo(NEXT);
        assertThat(line(sheet, Step.CREWS).said().words()).contains("Nobody comes yet for", "wrap", "cladding");
    }

    @Test
    void crews_and_forecasts_whose_days_are_over_count_no_more() {
        StartSheet sheet = sheet(QUAY, PlanChoice.NONE, false, LONG_AFTER);

        assertThat(line(sheet, Step.CREWS).standing()).isEqualTo(NEXT);
        assertThat(line(sheet, Step.FORECAST).standing()).isEqualTo(OPTIONAL);
        assertThat(line(sheet, Step.FORECAST).said().words()).contains("None from now on at", "may rain");
    }

    @Test
    void a_run_under_way_says_so_and_a_published_plan_completes_the_sheet() {
        assertThat(line(sheet(QUAY, PlanChoice.NONE, true, BEFORE), Step.PLAN)
                        .said()
                        .words())
                .isEqualTo("Being planned.");
        var publication = new Publication(new PublicationId(1), new FolderId(1), new PlanId(1), BEFORE, "P");
        var choice = new PlanChoice(null, publication, null, false);

        StartSheet sheet = sheet(QUAY, choice, false, BEFORE);

        assertThat(sheet.complete()).isTrue();
        assertThat(standings(sheet)).allMatch(one -> one == DONE || one == OPTIONAL);
    }

    @Test
    void whoever_only_manages_people_is_asked_for_someone_who_plans() {
        var olaf = person(Role.ADMINISTRATOR);
        var alone = StartSheet.of(new StartFacts(olaf, null, false, Set.of(Role.ADMINISTRATOR), BEFORE));
        var helped = StartSheet.of(new StartFacts(olaf, null, false, Set.of(Role.SCHEDULER, Role.TESTER), BEFORE));

        assertThat(alone.lines()).extracting(Line::step).containsExactly(Step.PLANNER, Step.ACCOUNTS);
        assertThat(standings(alone)).containsExactly(NEXT, OPTIONAL);
        assertThat(standings(helped)).containsExactly(DONE, DONE);
        assertThat(StartSheet.of(new StartFacts(person(Role.CONTRACTOR), null, false, Set.of(Role.CONTRACTOR), BEFORE))
                        .lines())
                .extracting(Line::step)
                .contains(Step.SITE, Step.ACCOUNTS)
                .doesNotContain(Step.PLANNER);
    }
}
