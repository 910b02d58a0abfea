package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.FolderId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Reach;
import drylap.kernel.Trade;
import drylap.planning.HandResult;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.SiteDraft;
import drylap.planning.SitesByHand;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Compass;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** From a folder with one site in it, put in by hand, as it is the newest. */
@ViewTest
class StartViewTests extends SpringBrowserlessTest {
    private static final ZoneId LISBON = ZoneId.of("Europe/Lisbon");

    @Autowired
    private JobFolders folders;

    @Autowired
    private SitesByHand sites;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_contractor_has_put_in_a_site() {
        Person who = people.signIn(people.add(Role.CONTRACTOR, Reach.EVERYWHERE, null));
        var draft = new SiteDraft("Rua Nova", "", new GeoPoint(41.15, -8.61), LISBON);
        folder = ((HandResult.Saved) sites.add(who, null, draft, List.of())).folder();
    }

    private JobFolder stored() {
        return folders.load(folder);
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private TextField field(String label) {
        return find(TextField.class).all().stream()
                .filter(one -> label.equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
    }

    private Button button(String words) {
        return find(Button.class).all().stream()
                .filter(one -> words.equals(one.getText()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_start_page_says_what_is_there_and_what_is_next() {
        var view = navigate(StartView.class);

        assertThat(text(view))
                .contains("Rua Nova", "No wall yet at Rua Nova", "Nobody comes yet for: setting windows")
                .contains("It needs openings and a crew")
                .doesNotContain("invented week");
        assertThat(button("Plan now").isEnabled()).isFalse();
    }

    @Test
    void every_screen_opens_with_no_more_than_a_site() {
        for (var screen : List.of(
                WeekSheetView.class,
                WallsView.class,
                SitesView.class,
                OpenHoursView.class,
                ForecastChangeView.class,
                SeasonView.class,
                WhatIfView.class,
                OddsView.class,
                JobFoldersView.class,
                WindowScheduleView.class,
                CrewsView.class,
                RulesView.class,
                OwnSitesView.class,
                OwnCrewsView.class,
                StartView.class))
            assertThat(navigate(screen)).as(screen.getSimpleName()).isNotNull();
    }

    @Test
    @SuppressWarnings("unchecked")
    void a_site_with_its_walls_is_saved_or_the_field_is_named_that_is_wrong() {
        var view = navigate(OwnSitesView.class);
        test(field("Name of the site")).setValue("Mill Lane 4");
        test(field("Place: latitude, longitude")).setValue("Mill Lane");
        test(button("Save the site")).click();
        assertThat(text(view)).contains("Place: latitude, longitude: 'Mill Lane' is no place; accepted: latitude");
        assertThat(stored().sites()).hasSize(1);

        test(field("Place: latitude, longitude")).setValue("41.16, -8.62");
        test(find(TextArea.class).all().getFirst()).setValue("4 Invented Lane\nSampleton");
        ((ComboBox<String>) find(ComboBox.class).all().getFirst()).setValue(LISBON.getId());
        ((CheckboxGroup<Compass>) find(CheckboxGroup.class).all().getFirst())
                .setValue(Set.of(Compass.WEST, Compass.NORTHEAST));
        test(button("Save the site")).click();

        assertThat(text(view)).contains("Mill Lane 4 is saved");
        assertThat(stored().sites()).extracting(site -> site.name()).containsExactly("Rua Nova", "Mill Lane 4");
        assertThat(stored().sites().getLast().address().lines()).containsExactly("4 Invented Lane", "Sampleton");
        assertThat(text(view)).contains("4 Invented Lane, Sampleton");
        assertThat(stored().facades()).extracting(wall -> wall.id().facade()).containsExactly("Northeast", "West");
    }

    @Test
    void crews_are_saved_one_after_the_other_each_for_the_next_trade() {
        var view = navigate(OwnCrewsView.class);
        test(field("To")).setValue("6");
        test(field("Name of the crew")).setValue("window-1");
        test(button("Save the crew")).click();
        assertThat(text(view)).contains("the day ends at 06:00 and starts at 07:00; accepted");
        assertThat(stored().crews()).isEmpty();

        test(field("To")).setValue("15.30");
        test(field("How many people, not needed")).setValue("two");
        test(button("Save the crew")).click();
        assertThat(text(view)).contains("'two' is no whole number", "from 1 to 20 is accepted");
        test(field("How many people, not needed")).setValue("3");
        test(button("Save the crew")).click();
        test(field("Name of the crew")).setValue("wrap-1");
        test(button("Save the crew")).click();

        assertThat(stored().crews()).extracting(crew -> crew.trade()).containsExactly(Trade.WINDOW, Trade.WRAP);
        assertThat(stored().crews()).extracting(crew -> crew.people()).containsExactly(3, null);
        assertThat(stored().shifts())
                .isNotEmpty()
                .allMatch(shift -> shift.zone().equals(LISBON));
        assertThat(text(view)).contains("Crew wrap-1 is saved", "window-1", "window crew, 3 people; ", "days, ");
    }

    @Test
    void an_administrator_is_asked_for_someone_who_plans() {
        people.signIn(people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null));

        assertThat(text(navigate(StartView.class)))
                .contains("Someone who plans")
                .doesNotContain("A site with its place");
    }
}
