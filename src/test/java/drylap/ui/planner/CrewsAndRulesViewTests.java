package drylap.ui.planner;

import static drylap.persistence.jooq.Tables.CALENDAR_LINK;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.select.SelectTester;
import com.vaadin.flow.component.textfield.TextField;
import drylap.crews.AbsenceRequest;
import drylap.crews.Absences;
import drylap.handoff.HoldPoint;
import drylap.handoff.HoldPoints;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolders;
import drylap.planning.RuleRequest;
import drylap.progress.PhotoPlaces;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.time.LocalDate;
import java.util.List;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class CrewsAndRulesViewTests extends SpringBrowserlessTest {
    private static final CrewId W1 = new CrewId("W1");
    private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);

    @Autowired
    private JobFolders folders;

    @Autowired
    private CurrentFolders current;

    @Autowired
    private Absences absences;

    @Autowired
    private ChangedRules rules;

    @Autowired
    private TestPeople people;

    @Autowired
    private HoldPoints holdPoints;

    @Autowired
    private PhotoPlaces photoPlaces;

    @Autowired
    private DSLContext db;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_scheduler_looks_at_a_folder() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", new QuayFolder().folder());
        db.deleteFrom(CALENDAR_LINK).execute();
    }

    @Test
    void an_absence_is_added_with_its_reason_and_shown() {
        var view = navigate(CrewsView.class);
        click("Add an absence of crew W1");
        field("Reason").setValue("van in the garage");
        press("Save");

        assertThat(text(view)).contains("away all day: van in the garage");
        assertThat(current.load(folder).shifts())
                .noneMatch(shift -> shift.crew().equals(W1) && shift.date().equals(MONDAY));
    }

    @Test
    void an_absence_without_a_reason_is_not_saved_and_says_what_is_missing() {
        navigate(CrewsView.class);
        click("Add an absence of crew W1");
        press("Save");

        assertThat(text(find(Dialog.class).single())).contains("say why");
        assertThat(absences.of(folder)).isEmpty();
    }

    @Test
    void an_absence_is_withdrawn() {
        absences.add(people.scheduler(), folder, AbsenceRequest.wholeDay(W1, MONDAY, "ill"));
        var view = navigate(CrewsView.class);
        assertThat(text(view)).contains("does not come").contains("away all day: ill");

        click("Withdraw the absence of crew W1 on Mon 13 Apr");

        assertThat(absences.of(folder)).isEmpty();
        assertThat(text(view)).doesNotContain("does not come");
    }

    @Test
    void a_calendar_link_is_made_shown_once_and_revoked() {
        var view = navigate(CrewsView.class);
        assertThat(text(view)).contains("Calendar: no link");
        click("Make a calendar link for crew W1");

        var shown = find(Span.class).withClassName("secret").single().getText();
        assertThat(shown).matches("https?://.+/calendar/[A-Za-z0-9_-]{43}[.]ics");
        press("Done");
        assertThat(find(Dialog.class).all()).isEmpty();
        assertThat(text(view)).contains("link made ", "not read yet").doesNotContain(shown);

        press("Revoke");
        assertThat(text(view)).doesNotContain("link made ");
    }

    @Test
    void a_rule_is_changed_everywhere_and_goes_back() {
        var view = navigate(RulesView.class);
        click("Change: A wetted wall dries for");
        field("Value").setValue("6.5");
        field("Reason").setValue("thick render");
        press("Save");
        assertThat(text(view)).contains("6.5 h").contains("thick render");
        assertThat(current.load(folder).rules().everywhere().value(Rule.DRYING_H))
                .isEqualTo(6.5);

        click("Change: A wetted wall dries for");
        field("Reason").setValue("was wrong");
        press("Back to the default");
        assertThat(current.load(folder).rules()).isEqualTo(folders.load(folder).rules());
    }

    @Test
    void a_value_out_of_bounds_or_no_number_is_not_saved_and_says_what_is_accepted() {
        navigate(RulesView.class);
        click("Change: A wetted wall dries for");
        field("Reason").setValue("trial");
        field("Value").setValue("100");
        press("Save");
        assertThat(text(find(Dialog.class).single())).contains("accepted is a number from 0 to 72 h");
        field("Value").setValue("six");
        press("Save");
        assertThat(text(find(Dialog.class).single())).contains("“six” is no number");
        assertThat(current.load(folder).rules()).isEqualTo(folders.load(folder).rules());
    }

    /** Nothing is overwritten unseen: the second is shown the first's value, and decides. */
    @Test
    void who_saves_second_sees_the_first_value_before_theirs_takes_its_place() {
        navigate(RulesView.class);
        click("Change: A wetted wall dries for");
        var other = people.scheduler();
        rules.change(other, folder, new RuleRequest(null, Rule.DRYING_H, 9.0, "wet render", 0));
        field("Value").setValue("4");
        field("Reason").setValue("thin render");
        press("Save");
        assertThat(text(find(Dialog.class).single()))
                .contains(other.name() + " set it to 9 meanwhile: wet render. Nothing of yours was saved.");
        assertThat(current.load(folder).rules().everywhere().value(Rule.DRYING_H))
                .isEqualTo(9);

        press("Save");
        assertThat(current.load(folder).rules().everywhere().value(Rule.DRYING_H))
                .isEqualTo(4);
    }

    @Test
    void a_scheduler_of_one_site_changes_nothing_that_holds_everywhere() {
        Person ofQuay = people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("Q"))), null));
        assertThat(ofQuay.reach().everySite()).isFalse();
        var view = navigate(RulesView.class);

        assertThat(text(view)).contains("A wetted wall dries for");
        assertThat(find(Button.class).all())
                .noneMatch(button -> button.getText().equals("Change") && button.isVisible());
    }

    @Test
    void hold_points_belong_to_a_site() {
        navigate(RulesView.class);
        assertThat(find(Checkbox.class).all()).isEmpty();
        var quay = new SiteId("Q");
        boolean before = holdPoints.at(folder, quay).contains(HoldPoint.MOCK_UP);

        test(SelectTester.class, places()).selectItem("Quay Nine");
        test(find(Checkbox.class).all().stream()
                        .filter(box -> box.getLabel().equals(HoldPoint.MOCK_UP.words()))
                        .findFirst()
                        .orElseThrow())
                .click();

        assertThat(holdPoints.at(folder, quay).contains(HoldPoint.MOCK_UP)).isEqualTo(!before);
        assertThat(holdPoints.at(folder, new SiteId("M")).contains(HoldPoint.MOCK_UP))
                .isEqualTo(before);
    }

    @Test
    void places_in_photos_are_kept_where_a_site_wants_them() {
        navigate(RulesView.class);
        var quay = new SiteId("Q");
        test(SelectTester.class, places()).selectItem("Quay Nine");
        var box = find(Checkbox.class).all().stream()
                .filter(one -> one.getLabel().startsWith("Keep it in photos"))
                .findFirst()
                .orElseThrow();
        assertThat(box.getValue()).isFalse();

        test(box).click();

        assertThat(photoPlaces.keptAt(folder, quay)).isTrue();
        assertThat(photoPlaces.keptAt(folder, new SiteId("M"))).isFalse();
    }

    private Select<?> places() {
        return find(Select.class).all().stream()
                .filter(select -> "Rules of".equals(select.getLabel()))
                .findFirst()
                .orElseThrow();
    }

    private void click(String label) {
        test(find(Button.class).withAriaLabel(label).single()).click();
    }

    private void press(String text) {
        test(find(Button.class).withText(text).single()).click();
    }

    private TextField field(String label) {
        return find(TextField.class).all().stream()
                .filter(field -> field.getLabel().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
