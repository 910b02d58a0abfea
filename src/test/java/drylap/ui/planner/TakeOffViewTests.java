package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.QueryParameters;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.tables.Cell;
import drylap.tables.Table;
import drylap.ui.QuayFolder;
import drylap.ui.components.SpreadsheetLink;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class TakeOffViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private TestPeople people;

    @BeforeEach
    void a_planned_folder_lies_on_the_table() {
        var quay = new QuayFolder().folder();
        var folder = folders.save("quay", quay);
        plans.save(folder, Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false));
    }

    private TakeOffView openWholeQuay() {
        UI.getCurrent().navigate(TakeOffView.class, QueryParameters.simple(Map.of("site", "Q", "extent", "whole")));
        return (TakeOffView) getCurrentView();
    }

    private Table table(String what) {
        return find(SpreadsheetLink.class).all().stream()
                .filter(link -> Objects.requireNonNull(link.getElement().getAttribute("aria-label"))
                        .startsWith(what))
                .findFirst()
                .orElseThrow()
                .table();
    }

    @Test
    void whoever_opens_the_page_sees_the_first_day_over_all_crews() {
        people.signIn(people.scheduler());
        TakeOffView view = navigate(TakeOffView.class);

        assertThat(text(view))
                .contains("What it takes: Mon 13 Apr, all crews", "Crew", "W1", "cartridges of sealant")
                .contains("Cut list, flashing strip 229 mm wide", "the window maker's instructions come first");
    }

    /** The numbers are worked by hand in {@code SiteTakeOffTests}. */
    @Test
    void a_site_is_shown_with_its_sums_and_cuts_and_both_are_spreadsheets() {
        people.signIn(people.scheduler());
        TakeOffView view = openWholeQuay();

        assertThat(text(view))
                .contains("What it takes: Quay Nine, whole walls", "3 windows, 52 fasteners", "west")
                .contains("4 × jamb flashing 1945 mm (76 9/16 in)", "QW1-01, QW1-02");
        Table sums = table("What it takes");
        assertThat(sums.heads()).startsWith("Wall", "Openings", "Windows", "Apron strip");
        assertThat(sums.rows().getFirst())
                .startsWith(
                        new Cell.Text("west"),
                        new Cell.Number(3, ""),
                        new Cell.Number(3, ""),
                        new Cell.Number(4.67, "m"));
        assertThat(table("Cut list, flashing strip").rows())
                .anySatisfy(row -> assertThat(row)
                        .contains(
                                new Cell.Text("jamb flashing"), new Cell.Number(1944.5, "mm"), new Cell.Number(4, "")));
        assertThat(find(Anchor.class).all().stream()
                        .map(Anchor::getHref)
                        .filter(href -> href.startsWith("/papers/take-off.pdf")))
                .isNotEmpty()
                .allMatch(href -> href.contains("site=Q") && href.contains("extent=whole"));
    }

    @Test
    void who_sees_one_site_takes_off_that_site_alone() {
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("M"))), null));
        TakeOffView view = openWholeQuay();

        assertThat(text(view)).doesNotContain("Quay Nine");
        var of = find(Select.class).withCaption("Of").single();
        assertThat(of.getListDataView().getItems().toList().toString())
                .contains("site=M", "LEFT", "WHOLE")
                .doesNotContain("site=Q");
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
