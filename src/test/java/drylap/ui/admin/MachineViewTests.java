package drylap.ui.admin;

import static drylap.persistence.jooq.Tables.JOB;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import drylap.kernel.Reach;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.planner.ViewTest;
import java.time.Clock;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** How Drylap runs, as whoever looks after the machine sees it. */
@ViewTest
class MachineViewTests extends SpringBrowserlessTest {
    private static final String WHY = "no more memory, as this test has it";

    @Autowired
    private TestPeople people;

    @Autowired
    private DSLContext db;

    @Autowired
    private Clock clock;

    private long job;

    @BeforeEach
    void a_job_failed() {
        job = db.insertInto(JOB)
                .set(JOB.KIND, "plan")
                .set(JOB.PAYLOAD, "0")
                .set(JOB.STATE, "failed")
                .set(JOB.FAILURE, WHY)
                .set(JOB.ASKED_AT, clock.instant())
                .set(JOB.ENDED_AT, clock.instant())
                .returning(JOB.ID)
                .fetchSingle(JOB.ID);
    }

    @AfterEach
    void it_is_forgotten() {
        db.deleteFrom(JOB).where(JOB.ID.eq(job)).execute();
    }

    @Test
    void an_administrator_sees_what_failed_and_why_and_takes_it_along() {
        people.signIn(people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null));
        var view = navigate(MachineView.class);

        assertThat(view.getElement().getTextRecursively())
                .contains("Is all well?", "Jobs that failed this week", WHY, "The database takes", "Version");
        var table = find(SpreadsheetLink.class).all().getFirst().table();
        assertThat(table.toString()).contains(WHY, "a plan", "failed");
    }

    @Test
    void a_scheduler_is_not_let_in() {
        people.signIn(people.scheduler());
        try {
            UI.getCurrent().navigate(MachineView.class);
        } catch (RuntimeException refused) {
            // answered as a screen that does not exist
        }

        assertThat(UI.getCurrent().getInternals().getActiveRouterTargetsChain())
                .noneMatch(MachineView.class::isInstance);
    }
}
