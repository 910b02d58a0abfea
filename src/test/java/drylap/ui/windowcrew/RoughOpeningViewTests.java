package drylap.ui.windowcrew;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.roughopening.RoughPlace;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.planner.ViewTest;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** An opening of 900 by 1,200 mm, about 35 7/16 by 47 1/4 inches; its diagonals are 1,500 mm (3-4-5), about 59 1/16 inches. */
@ViewTest
class RoughOpeningViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_folder_is_there() {
        folder = folders.save("quay", new QuayFolder().folder());
    }

    private void signIn(Role role) {
        people.signIn(people.add(role, Reach.of(Set.of(new SiteId("Q"))), role == Role.FOLLOW_ON ? "P1" : "W1"));
    }

    private String open(String opening) {
        UI.getCurrent()
                .navigate(
                        RoughOpeningView.class,
                        QueryParameters.simple(Map.of("folder", String.valueOf(folder.value()), "opening", opening)));
        return text();
    }

    private String text() {
        Component view = getCurrentView() instanceof Component shown ? shown : UI.getCurrent();
        return view.getElement().getTextRecursively();
    }

    private void fill(String width, String height, String diagonal, String off) {
        for (RoughPlace place : RoughPlace.values()) {
            String value = place.code().startsWith("width")
                    ? width
                    : place.code().startsWith("height") ? height : place.code().startsWith("diagonal") ? diagonal : off;
            test(field(place)).setValue(value);
        }
    }

    private TextField field(RoughPlace place) {
        return find(TextField.class).all().stream()
                .filter(one -> place.words().equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
    }

    private void record() {
        test(find(Button.class).withText("Record these sizes").single()).click();
    }

    @Test
    void inches_with_fractions_and_millimetres_are_recorded_and_judged() {
        signIn(Role.WINDOW_CREW);
        assertThat(open("QW2-01"))
                .contains("Designed 900 × 1200 mm", "It was not measured yet", "work at height is safe");
        fill("35 7/16", "1200 mm", "59 1/16\"", "0");
        test(field(RoughPlace.PLUMB_LEFT)).setValue("1/4");
        record();
        assertThat(text())
                .contains("fits with shims", "The left jamb is out of plumb by 6.4 mm (1/4 in)", "Measure it again")
                .doesNotContain("It was not measured yet");
        fill("34 1/2", "47 1/4", "58 1/2", "0");
        record();
        assertThat(text())
                .contains("does not fit", "Report it to the scheduler", "Measured before", "fits with shims.");
    }

    @Test
    void what_cannot_be_read_is_marked_and_nothing_is_recorded() {
        signIn(Role.WINDOW_CREW);
        open("QW2-01");
        fill("35 7/16", "47 1/4", "59 1/16", "0");
        test(field(RoughPlace.WIDTH_HEAD)).setValue("about 35");
        test(field(RoughPlace.LEVEL_SILL)).setValue("");
        record();
        assertThat(field(RoughPlace.WIDTH_HEAD).isInvalid()).isTrue();
        assertThat(field(RoughPlace.WIDTH_HEAD).getErrorMessage()).contains("36 1/2\"");
        assertThat(field(RoughPlace.LEVEL_SILL).isInvalid()).isTrue();
        assertThat(text()).contains("Nothing was recorded yet", "It was not measured yet");
    }

    @Test
    void who_does_not_set_windows_sees_it_only() {
        signIn(Role.FOLLOW_ON);
        assertThat(open("QW2-01")).contains("It was not measured yet");
        assertThat(find(Button.class).withText("Record these sizes").all()).isEmpty();
        assertThat(open("MS1-01")).contains("No such opening");
        assertThat(open("none")).contains("No such opening");
    }
}
