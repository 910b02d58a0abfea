package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.FolderId;
import drylap.kernel.Task;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.components.VisitChosen;
import drylap.ui.components.VisitDropped;
import drylap.ui.components.WeekSheet;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** On the quay folder's planned week, crew W1 installs MS1-02 on Monday from 10:17 to 11:00. */
@ViewTest
class VisitPanelViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private CurrentFolders current;

    @Autowired
    private Plans plans;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_planned_folder_lies_on_the_schedulers_table() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", new QuayFolder().folder());
        plans.save(folder, planned());
    }

    @Test
    void a_chosen_visit_opens_with_its_facts_and_the_way_to_its_wall() {
        choose("MS1-02");

        assertThat(text(panel()))
                .contains("Install of MS1-02, crew W1, Mon 13 Apr 10:17 to 11:00")
                .contains("Mill Row, south, level 1")
                .contains("Not pinned")
                .contains("This is where it stands.");
        assertThat(find(RouterLink.class).from(panel()).single().getHref()).contains("walls?opening=MS1-02");
        assertThat(move().isEnabled()).isFalse();
    }

    @Test
    void the_verdict_changes_with_the_start_before_anything_is_saved() {
        choose("MS1-02");

        start().setValue(LocalTime.of(10, 0));
        assertThat(text(panel()))
                .contains("It breaks a rule there.")
                .contains("a crew does one task at a time")
                .contains("Install of MS1-02, crew W1, Mon 13 Apr 10:00");
        assertThat(move().isEnabled()).isFalse();

        start().setValue(LocalTime.of(10, 25));
        assertThat(text(panel())).contains("It keeps every rule there.");
        assertThat(move().isEnabled()).isTrue();
        assertThat(install().start()).isEqualTo(at("10:17"));
    }

    @Test
    void a_legal_move_is_saved_pinned_and_shown() {
        choose("MS1-02");
        start().setValue(LocalTime.of(10, 25));

        test(move()).click();

        assertThat(install().start()).isEqualTo(at("10:25"));
        assertThat(current.load(folder).published())
                .filteredOn(PublishedVisit::pinned)
                .extracting(one -> one.visit().opening().value())
                .containsExactly("MS1-02");
        assertThat(find(Dialog.class).all()).isEmpty();
        choose("MS1-02");
        assertThat(text(panel())).contains("Pinned: later plans keep it here.");
    }

    @Test
    void a_visit_says_why_it_is_there_and_what_moves_cost_and_nothing_is_saved() {
        choose("MS1-02");
        Plan before = plans.latest(folder).orElseThrow();

        test(button("Why here, and what a move would cost")).click();

        assertThat(text(panel())).contains("The page stays yours meanwhile");
        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(60)).untilAsserted(() -> {
            whatIsPushedArrives();
            assertThat(text(panel()))
                    .contains("Binds, Mon 13 Apr 10:17")
                    .contains("one working day later", "first in line of its day");
        });
        assertThat(plans.latest(folder)).contains(before);
    }

    private static void whatIsPushedArrives() {
        var session = UI.getCurrent().getSession();
        session.unlock();
        session.lock();
    }

    @Test
    void a_visit_is_pinned_where_it_stands_and_let_go_again() {
        choose("MS1-02");
        test(button("Pin here")).click();
        assertThat(current.load(folder).published()).anyMatch(PublishedVisit::pinned);

        choose("MS1-02");
        test(button("Unpin")).click();
        assertThat(current.load(folder).published()).noneMatch(PublishedVisit::pinned);
    }

    @Test
    void a_dragged_visit_opens_with_the_place_where_it_was_put_down() {
        var sheet = sheet();
        ComponentUtil.fireEvent(
                sheet, new VisitDropped(sheet, true, "MS1-02", Task.INSTALL.code(), "P1", "2026-04-14", 600));

        assertThat(start().getValue()).isEqualTo(LocalTime.of(10, 0));
        assertThat(text(panel())).contains("a crew does tasks of its own trade").contains("crew P1, Tue 14 Apr 10:00");
    }

    @Test
    void who_was_overtaken_chooses_between_looking_and_trying_on_the_newer_plan() {
        choose("MS1-02");
        start().setValue(LocalTime.of(10, 25));
        plans.save(folder, planned());

        test(move()).click();
        assertThat(text(panel())).contains("a newer plan").contains("Nothing was saved");
        assertThat(install().start()).isEqualTo(at("10:17"));

        test(button("Try it on the newer plan")).click();
        assertThat(start().getValue()).isEqualTo(LocalTime.of(10, 25));
        test(move()).click();
        assertThat(install().start()).isEqualTo(at("10:25"));
    }

    @Test
    void the_sheet_is_narrowed_by_site_and_says_what_is_filtered_out() {
        UI.getCurrent().navigate(WeekSheetView.class, QueryParameters.of("site", "M"));

        assertThat(text(getCurrentView())).contains("5 of 13 visits, 3 of 3 crews; the others are filtered out");

        test(button("Show everything")).click();
        assertThat(text(getCurrentView())).contains("13 of 13 visits, 3 of 3 crews");
    }

    @Test
    void a_filter_is_remembered_while_the_page_is_open() {
        UI.getCurrent().navigate(WeekSheetView.class, QueryParameters.of("crew", "W1"));
        navigate(WallsView.class);

        var view = navigate(WeekSheetView.class);

        assertThat(text(view)).contains("4 of 13 visits, 1 of 3 crews");
        assertThat(find(Select.class).all()).extracting(Select::getLabel).contains("Site", "Trade", "Crew");
    }

    private void choose(String opening) {
        var sheet = sheet();
        ComponentUtil.fireEvent(sheet, new VisitChosen(sheet, true, opening, Task.INSTALL.code()));
    }

    private WeekSheet sheet() {
        if (!(getCurrentView() instanceof WeekSheetView)) navigate(WeekSheetView.class);
        return find(WeekSheet.class).single();
    }

    private Dialog panel() {
        return find(Dialog.class).single();
    }

    private TimePicker start() {
        return find(TimePicker.class).from(panel()).single();
    }

    private Button move() {
        return button("Move and pin it there");
    }

    private Button button(String words) {
        return find(Button.class).all().stream()
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private Visit install() {
        return plans.latest(folder).orElseThrow().visits().stream()
                .filter(one -> one.opening().value().equals("MS1-02") && one.task() == Task.INSTALL)
                .findFirst()
                .orElseThrow();
    }

    private static java.time.Instant at(String clock) {
        return OffsetDateTime.parse("2026-04-13T%s:00-07:00".formatted(clock)).toInstant();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private static String text(com.vaadin.flow.component.HasElement view) {
        return view.getElement().getTextRecursively();
    }

    private static Plan planned() {
        return Planner.standard()
                .plan(new QuayFolder().folder(), new PlanRequest(null, null, 0L, 1), _ -> {}, () -> false);
    }
}
