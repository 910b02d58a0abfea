package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import drylap.crews.AbsenceRequest;
import drylap.crews.AbsenceResult;
import drylap.crews.Absences;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class PublishViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private CurrentFolders current;

    @Autowired
    private Absences absences;

    @Autowired
    private Publications publications;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_planned_folder_lies_on_the_schedulers_table() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", new QuayFolder().folder());
        plans.save(folder, plan(200));
    }

    @Test
    void a_proposal_becomes_the_published_plan_with_one_press() {
        var view = navigate(WeekSheetView.class);
        assertThat(text(view)).contains("No plan of this folder is published");

        test(button("Publish this proposal")).click();

        assertThat(publications.latest(folder)).isPresent();
        assertThat(publications.inWork()).contains(folder);
        assertThat(text(view)).contains("Published").doesNotContain("No plan of this folder is published");
        assertThat(find(Button.class).all()).extracting(Button::getText).doesNotContain("Publish this proposal");
    }

    @Test
    void a_newer_proposal_is_shown_beside_what_is_published() {
        navigate(WeekSheetView.class);
        test(button("Publish this proposal")).click();
        plans.save(folder, plan(1));

        var view = navigate(WallsView.class)
                .getUI()
                .map(_ -> navigate(WeekSheetView.class))
                .orElseThrow();
        test(button("Look at the published plan")).click();

        assertThat(text(view)).contains("Against the published plan").contains("Below: the published plan");
    }

    @Test
    void each_change_of_the_published_plan_is_shown_with_what_caused_it() {
        var monday = LocalDate.of(2026, 4, 13);
        publications.publish(people.scheduler(), folder, plans.save(folder, plan(200)), null);
        var away = new AbsenceRequest(new CrewId("W1"), monday, null, null, "at a training");
        assertThat(absences.add(people.scheduler(), folder, away)).isInstanceOf(AbsenceResult.Added.class);
        plans.save(
                folder,
                Planner.standard()
                        .plan(current.load(folder), new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false));

        var view = navigate(WeekSheetView.class);

        assertThat(text(view))
                .contains("Against the published plan")
                .contains("crew W1 does not come on Mon 13 Apr")
                .doesNotContain("not in the published plan");
    }

    @Test
    void a_scheduler_of_one_site_sees_nothing_of_the_others() {
        var quay = new QuayFolder().folder();
        var one = quay.sites().getFirst();
        assertThat(text(navigate(WeekSheetView.class))).contains("No plan of this folder is published");
        people.signIn(people.add(Role.SCHEDULER, Reach.of(Set.of(one.id())), null));

        var view = navigate(WallsView.class);

        quay.sites().stream()
                .filter(site -> !site.equals(one))
                .forEach(site -> assertThat(text(view)).doesNotContain(site.name()));
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private Button button(String words) {
        return find(Button.class).all().stream()
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static Plan plan(long moves) {
        return Planner.standard()
                .plan(new QuayFolder().folder(), new PlanRequest(null, null, moves, 1), _ -> {}, () -> false);
    }
}
