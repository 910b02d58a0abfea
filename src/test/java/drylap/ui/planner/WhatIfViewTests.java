package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasLabel;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.Plans;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class WhatIfViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_folder_lies_on_the_schedulers_table() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", new QuayFolder().folder());
    }

    @Test
    void scenarios_are_put_together_compared_and_shown_side_by_side() {
        navigate(WhatIfView.class);
        assertThat(text(view())).contains("No scenario yet");

        field("Name of the new crew").setValue("W2");
        test(button("Add the change")).click();
        choose(ChangeForm.Kind.PERCENT);
        field("Scenario").setValue("dry");
        field("Per cent").setValue("-100");
        test(button("Add the change")).click();
        assertThat(text(view()))
                .contains("crew W2 comes too, with the hours of crew W1, from Mon 13 Apr on")
                .contains("every hour's rain is 100 % less");

        seconds().setValue(5L);
        test(button("Compare")).click();
        assertThat(button("Stop").isVisible()).isTrue();

        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(90)).untilAsserted(() -> {
            whatIsPushedArrives();
            assertThat(text(view())).contains("Differences are against the job as it is");
        });
        assertThat(text(view()))
                .contains(
                        "as it is",
                        "Scenario 1",
                        "dry",
                        "Tasks not planned",
                        "Sum",
                        "Quay Nine, west",
                        "due Fri 17 Apr")
                .contains("Compared.");
        assertThat(button("Compare").isVisible()).isTrue();
        assertThat(plans.latest(folder)).isEmpty();
    }

    @Test
    void what_is_not_accepted_is_told_with_its_field_and_nothing_is_added() {
        navigate(WhatIfView.class);

        test(button("Add the change")).click();
        assertThat(trouble()).contains("Name of the new crew: is blank", "a name of up to 40 characters");

        field("Name of the new crew").setValue("P1");
        test(button("Add the change")).click();
        assertThat(trouble()).contains("Name of the new crew: P1 is taken");

        choose(ChangeForm.Kind.DELAY);
        field("Days later").setValue("two");
        test(button("Add the change")).click();
        assertThat(trouble())
                .contains("Days later: 'two' is no whole number; a whole number from 1 to 365 is accepted.");

        field("Days later").setValue("2");
        field("Only opening").setValue("MS1-02");
        test(button("Add the change")).click();
        assertThat(trouble()).contains("Only opening: Quay Nine, west has no opening 'MS1-02'");

        field("Scenario").setValue("as it is");
        test(button("Add the change")).click();
        assertThat(trouble()).contains("Scenario: that is the job without a change");

        assertThat(text(view())).contains("No scenario yet");
        test(button("Compare")).click();
        assertThat(trouble()).contains("There is no scenario yet; at least one is needed.");
    }

    @Test
    void a_change_that_the_job_does_not_allow_is_refused() {
        navigate(WhatIfView.class);
        choose(ChangeForm.Kind.DROP_DAY);
        pick("Who does not come", 1);

        test(button("Add the change")).click();

        assertThat(trouble()).contains("The change cannot be made: no crew of P1 has a shift on 2026-04-13.");
    }

    @Test
    void scenarios_and_their_changes_are_taken_out_again() {
        navigate(WhatIfView.class);
        choose(ChangeForm.Kind.PERCENT);
        for (String percent : List.of("20", "30")) {
            field("Per cent").setValue(percent);
            test(button("Add the change")).click();
        }

        test(labelled("Undo in scenario Scenario 1: every hour's rain is 20 % more"))
                .click();
        assertThat(text(view())).contains("30 % more").doesNotContain("20 % more");

        test(labelled("Take out scenario Scenario 1")).click();
        assertThat(text(view())).contains("No scenario yet");
    }

    @Test
    void a_file_of_scenarios_is_taken_in_whole_or_refused_with_its_lines() {
        navigate(WhatIfView.class);
        String header = "scenario,change,crew,like,site,facade,opening,date,days,from,until,percent,file\n";

        upload(header + "wet,rain by percent,,,,,,,,,,4000,\nlate,fly,,,,,,,,,,,\n");
        assertThat(text(view()))
                .contains("mine.csv was not taken in; nothing was changed.")
                .contains("mine.csv:2 percent", "mine.csv:3 change", "add crew, drop day")
                .contains("No scenario yet");

        upload(header + "wet,rain by percent,,,,,,,,,,40,\n");
        assertThat(text(view())).contains("mine.csv was taken in.", "every hour's rain is 40 % more");
    }

    @Test
    void who_does_not_see_every_site_is_told_so() {
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("Q"))), null));
        navigate(WhatIfView.class);

        assertThat(text(view())).contains("not all of this one are yours");
        assertThat(find(Button.class).all()).noneMatch(one -> one.getText().equals("Compare"));
    }

    private void upload(String text) {
        test(UploadTester.class, find(Upload.class).single())
                .upload("mine.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private WhatIfView view() {
        return find(WhatIfView.class).single();
    }

    private void choose(ChangeForm.Kind kind) {
        this.<ChangeForm.Kind>select("What would be otherwise").setValue(kind);
    }

    private void pick(String label, int place) {
        Select<Object> select = select(label);
        select.setValue(select.getListDataView().getItem(place));
    }

    private Select<Long> seconds() {
        return select("Time for each");
    }

    @SuppressWarnings("unchecked")
    private <T> Select<T> select(String label) {
        return (Select<T>) labelled(Select.class, label);
    }

    private TextField field(String label) {
        return labelled(TextField.class, label);
    }

    private <T extends Component & HasLabel> T labelled(Class<T> type, String label) {
        return find(type).all().stream()
                .filter(one -> label.equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
    }

    private Button button(String words) {
        return find(Button.class).all().stream()
                .filter(one -> one.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private Button labelled(String label) {
        return find(Button.class).all().stream()
                .filter(one -> one.getAriaLabel().filter(label::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }

    private String trouble() {
        return String.join(
                " ",
                find(com.vaadin.flow.component.html.Paragraph.class).all().stream()
                        .filter(one -> one.isVisible() && one.hasClassName("trouble"))
                        .map(com.vaadin.flow.component.html.Paragraph::getText)
                        .toList());
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private static void whatIsPushedArrives() {
        var session = UI.getCurrent().getSession();
        session.unlock();
        session.lock();
    }
}
