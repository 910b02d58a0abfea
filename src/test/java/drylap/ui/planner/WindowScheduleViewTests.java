package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import drylap.buildingmodel.ModelText;
import drylap.buildingmodel.ModelText.Unit;
import drylap.kernel.FolderId;
import drylap.planning.JobFolders;
import drylap.security.TestPeople;
import drylap.windowschedule.LengthUnit;
import drylap.windowschedule.SiteWithWalls;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class WindowScheduleViewTests extends SpringBrowserlessTest {
    private static final String FAULTY =
            "Mark,Qty,Width,Height,Floor,Elevation\nA,2,36,48,1,North\nB,,36,wide,1,West\nTotal,3,,,,\n";

    @Autowired
    private JobFolders folders;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_scheduler_has_a_folder_on_the_table() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", SiteWithWalls.folder());
    }

    private Component open(String csv) {
        var view = navigate(WindowScheduleView.class);
        test(UploadTester.class, find(Upload.class).single())
                .upload("schedule.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8));
        return view;
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private Button take() {
        return find(Button.class).withText("Take the openings in").single();
    }

    private TextField cell(String label) {
        return find(TextField.class).all().stream()
                .filter(one -> one.isVisible() && label.equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
    }

    @SuppressWarnings("unchecked")
    private <T> void choose(String label, String item) {
        Select<T> select = (Select<T>) find(Select.class).all().stream()
                .filter(one -> label.equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
        test(select).selectItem(item);
    }

    @Test
    void what_is_wrong_is_put_right_in_place_and_all_of_it_is_taken_in_at_once() {
        var view = open(FAULTY);
        assertThat(take().isEnabled()).isFalse();
        assertThat(text(view)).contains("3 rows to put right");
        choose("Numbers without a unit are", LengthUnit.INCH.words());
        assertThat(text(view)).contains("2 rows to put right");

        TextField height = cell("Frame height, column D");
        assertThat(height.isInvalid()).isFalse();
        TextField wide = find(TextField.class).all().stream()
                .filter(one -> one.getValue().equals("wide"))
                .findFirst()
                .orElseThrow();
        assertThat(wide.isInvalid()).isTrue();
        assertThat(wide.getErrorMessage()).contains("is not a length", "3'-0 1/2\"");
        test(wide).setValue("4'-0\"");
        assertThat(wide.isInvalid()).isFalse();
        test(find(Checkbox.class).withLabel("Leave row 4 out: it is no opening").single())
                .click();

        assertThat(take().isEnabled()).isTrue();
        int before = folders.load(folder).openings().size();
        test(take()).click();
        assertThat(text(view)).contains("3 openings are new, 0 were changed");
        assertThat(folders.load(folder).openings())
                .hasSize(before + 3)
                .extracting(one -> one.id().value())
                .endsWith("A-1", "A-2", "B");
    }

    @Test
    void a_schedule_again_says_what_differs_and_what_it_leaves_out() {
        var view = open("Mark,RO width (mm),RO height (mm),Floor,Elevation,Material,Method\n"
                + "QW2-01,1000,1200,2,west,vinyl,A1\nQW1-01,1300,1500,1,west,wood,A1\n");
        assertThat(text(view))
                .contains(
                        "0 openings new, 1 changed, 0 same, 1 begun and left as they are; 1 of the site are not in the schedule and stay")
                .contains("width 1000 mm instead of 900 mm")
                .contains("width stays 1200 mm, the schedule says 1300 mm");
        test(find(Checkbox.class)
                        .withLabel("Change it all the same, but for its method")
                        .single())
                .click();
        assertThat(text(view))
                .contains("2 changed", "width 1300 mm instead of 1200 mm", "method stays A, the schedule says A1");
    }

    @Test
    void a_file_that_is_none_is_refused_and_nothing_opens() {
        var view = navigate(WindowScheduleView.class);
        test(UploadTester.class, find(Upload.class).single())
                .upload("schedule.xlsx", "x/y", new byte[] {'P', 'K', 3, 4, 0});
        assertThat(text(view)).contains("schedule.xlsx", "broken or cut off zip file", "Nothing was changed");
        assertThat(find(H2.class).all()).extracting(H2::getText).doesNotContain("What it becomes");
    }

    @Test
    void a_building_model_says_how_it_is_understood_and_asks_for_its_storeys() {
        var view = navigate(WindowScheduleView.class);
        byte[] model = new ModelText("IFC4", Unit.INCH, "(0.13917310096,0.99026806874)")
                .storey("Ground floor", 0)
                .window("W-1", "Ground floor south", 500, 900, 900, 1_200)
                .bytes();
        test(UploadTester.class, find(Upload.class).single()).upload("house.ifc", "application/x-step", model);
        assertThat(text(view)).contains("IFC4, lengths in inch", "True north lies -8.0\u00b0", "1 row to put right");
        test(cell("Storey Ground floor is level")).setValue("1");
        assertThat(text(view)).contains("Nothing is wrong");
        choose("Elevation faces 172.0\u00b0", "south");
        test(take()).click();
        assertThat(text(view)).contains("1 openings are new");
        assertThat(folders.load(folder).openings().getLast().id().value()).isEqualTo("W-1");
    }

    @Test
    void the_job_folders_and_the_sites_lead_here() {
        assertThat(text(navigate(JobFoldersView.class))).contains("Openings of a site from a window schedule");
        assertThat(text(navigate(SitesView.class))).contains("Openings from a window schedule");
    }
}
