package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.RouterLink;
import drylap.handoff.Bookings;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.time.Duration;
import java.time.LocalDate;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The quay folder's days are long past, so that every visit of its published plan has slipped. */
@ViewTest
class BrokenAndBookedViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private Bookings bookings;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_planned_folder_lies_on_the_schedulers_table() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        plans.save(folder, Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false));
    }

    @Test
    void nothing_is_said_of_a_plan_that_nobody_has_published() {
        people.signIn(people.scheduler());
        navigate(WeekSheetView.class);

        assertThat(headings()).noneMatch(heading -> heading.startsWith("Broken"));
        assertThat(headings()).doesNotContain("Booked crew-days");
    }

    @Test
    void what_the_day_broke_stands_on_the_week_sheet_once_it_is_worked_out_and_leads_to_its_opening() {
        var scheduler = people.scheduler();
        people.signIn(scheduler);
        var plan = plans.latest(scheduler, folder).orElseThrow();
        publications.publish(scheduler, folder, plan.id(), null);
        navigate(WeekSheetView.class);

        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(60)).untilAsserted(() -> {
            whatIsPushedArrives();
            assertThat(headings())
                    .contains("Broken since it was published: %d visits"
                            .formatted(plan.plan().visits().size()));
        });

        var panel = find(Section.class).withClassName("broken").single();
        assertThat(text(panel)).contains("its time has passed, and it is not done");
        assertThat(find(RouterLink.class).from(panel).all())
                .extracting(RouterLink::getHref)
                .allMatch(href -> href.startsWith("walls?opening="))
                .isNotEmpty();
    }

    @Test
    void a_day_that_a_wrap_crew_booked_stands_beside_the_plan() {
        var wrapper = people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "P1");
        bookings.book(
                wrapper,
                folder,
                new SiteId("Q"),
                LocalDate.now(java.time.ZoneOffset.UTC).plusDays(3),
                "two of us");
        people.signIn(people.scheduler());
        navigate(WeekSheetView.class);

        assertThat(headings()).contains("Booked crew-days");
        assertThat(text(find(Section.class).withClassName("booked-days").single()))
                .contains(new CrewId("P1").value(), "Quay Nine", "two of us", "nothing for it there that day");
    }

    private static void whatIsPushedArrives() {
        var session = UI.getCurrent().getSession();
        session.unlock();
        session.lock();
    }

    private java.util.List<String> headings() {
        return find(H2.class).all().stream().map(H2::getText).toList();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
