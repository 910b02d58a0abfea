package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The window of QW2-01 comes on Thursday, two days after the last crew was there. */
@ViewTest
class NotPlannedViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private TestPeople people;

    @Test
    void what_is_left_out_says_on_request_what_would_plan_it_and_nothing_is_saved() {
        people.signIn(people.scheduler());
        var quay = new QuayFolder()
                .with("openings.csv", "vinyl,A,drainage,none,2026-04-10", "vinyl,A,drainage,none,2026-04-16")
                .folder();
        var folder = folders.save("quay", quay);
        Plan plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        plans.save(folder, plan);
        var sheet = navigate(WeekSheetView.class);

        test(find(Button.class).all().stream()
                        .filter(one -> one.getAriaLabel()
                                .filter("Find out what would plan the install of QW2-01"::equals)
                                .isPresent())
                        .findFirst()
                        .orElseThrow())
                .click();

        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(60)).untilAsserted(() -> {
            var session = UI.getCurrent().getSession();
            session.unlock(); // what is pushed arrives
            session.lock();
            assertThat(sheet.getElement().getTextRecursively())
                    .contains("that plans it: the window of QW2-01 is delivered 2 days earlier");
        });
        assertThat(plans.latest(folder)).contains(plan);
    }
}
