package drylap.ui.planner;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.select.Select;
import drylap.climate.KeptNormals;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Site;
import drylap.ui.QuayFolder;
import drylap.ui.components.SeasonChart;
import java.time.Duration;
import java.util.List;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class SeasonViewTests extends SpringBrowserlessTest {
    private static final SiteId MILL = new SiteId("M");

    @Autowired
    private JobFolders folders;

    @Autowired
    private KeptNormals kept;

    @Autowired
    private SeasonDesk desk;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void aFolderIsThere() {
        folder = folders.save("quay", new QuayFolder().folder());
    }

    private SeasonView open() {
        SeasonView view = navigate(SeasonView.class);
        drawn(view, "Left to do");
        return view;
    }

    private void drawn(SeasonView view, String words) {
        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(60)).untilAsserted(() -> {
            var session = UI.getCurrent().getSession();
            session.unlock(); // what is pushed arrives
            session.lock();
            assertThat(text(view)).contains(words).doesNotContain("Reckoning");
        });
    }

    @Test
    void a_site_shows_its_chance_its_months_and_what_another_crew_changes() {
        people.signIn(people.scheduler());
        SeasonView view = open();

        assertThat(text(view))
                .contains("Every facade with a due date in time:", "of 100")
                .contains("All of it is through by", "in 5 of 10 years")
                .contains("assumed climate", "beyond_rain_p")
                .contains("One more window crew", "It shows what is short; it promises no day.");
        assertThat(find(SeasonChart.class).all()).hasSize(1);
        assertThat(find(Anchor.class).all())
                .extracting(Anchor::getText)
                .contains("outlook_months.csv", "outlook_facades.csv", "outlook_one_more_crew.csv");
    }

    @Test
    void normals_that_are_brought_in_take_the_place_of_the_assumption_and_bad_ones_change_nothing() {
        people.signIn(people.scheduler());
        SeasonView view = open();
        SeasonNormals normals = find(SeasonNormals.class).single();

        normals.read("bad.csv", "month,rain_mm,rain_days\n13,60,12\n".getBytes(UTF_8));
        assertThat(text(view)).contains("bad.csv was not taken in; nothing was changed.", "bad.csv:2", "month");
        assertThat(kept.of(folder)).isEmpty();

        normals.read("good.csv", year().getBytes(UTF_8));
        drawn(view, "Monthly normals of Quay Nine are kept");
        assertThat(text(view)).doesNotContain("assumed climate");
        assertThat(kept.of(folder)).hasSize(12).allMatch(one -> new SiteId("Q").equals(one.site()));
    }

    private static String year() {
        StringBuilder rows = new StringBuilder("month,rain_mm,rain_days\n");
        for (int month = 1; month <= 12; month++) rows.append(month).append(",60,12\n");
        return rows.toString();
    }

    @Test
    void who_sees_one_site_sees_the_season_of_that_site_alone() {
        Person miller = people.add(Role.SCHEDULER, Reach.of(List.of(MILL)), null);
        people.signIn(miller);
        SeasonView view = open();

        assertThat(text(view))
                .contains("Mill Row", "No facade of this site has a due date.")
                .doesNotContain("Quay Nine");
        assertThat(find(Select.class)
                        .withCaption("Site")
                        .single()
                        .getListDataView()
                        .getItemCount())
                .isEqualTo(1);
        Site quay = new QuayFolder().folder().sites().getFirst();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> desk.outlook(miller, folder, quay));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> desk.hasNormals(miller, folder, quay));
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
