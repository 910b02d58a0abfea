package drylap.ui.windowcrew;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import drylap.assembly.Step;
import drylap.assembly.WorkLine;
import drylap.handoff.LeakDefinition;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.planner.ViewTest;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A tester whose day has one opening to spray. */
@ViewTest
class WaterTestViewTests extends SpringBrowserlessTest {
    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    private static final OpeningId ONE = new OpeningId("QW2-01");

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private OpeningStates states;

    @Autowired
    private StepLog log;

    @Autowired
    private DSLContext db;

    @Autowired
    private Clock clock;

    private final JobFolder job = new QuayFolder()
            .with("crews.csv", "P1,wrap", "T1,tester,,47.21,-124.2,America/Los_Angeles\nP1,wrap")
            .with("shifts.csv", "P1,2026-04-14", "T1,2026-04-14,07:00,15:30,,,\nP1,2026-04-14")
            .with("labour.csv", "wrap,*", "test,*,30,0,0,15,5,5\nwrap,*")
            .with(
                    "openings.csv",
                    "QW2-01,900,1200,vinyl,A,drainage,none,2026-04-10,,",
                    "QW2-01,900,1200,vinyl,A,drainage,none,2026-04-10,yes,")
            .folder();
    private FolderId folder = new FolderId(0);

    @BeforeEach
    void publish_a_plan() {
        folder = folders.save("quay", job);
        var visit = visit(LocalDate.ofInstant(clock.instant(), ZONE));
        var plan = new Plan(
                visit.start(),
                visit.start().plus(Duration.ofDays(2)),
                List.of(visit),
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
        publications.publishSample(folder, plans.save(folder, plan));
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
        for (var line : windowLines())
            log.mark(crew, MarkRequest.done(UUID.randomUUID(), folder, ONE, line.code(), clock.instant()));
        people.signIn(people.add(Role.TESTER, Reach.EVERYWHERE, "T1"));
        UI.getCurrent().navigate(MyDayView.class);
    }

    @Test
    void a_test_that_passes_is_recorded_with_its_leak_definition_and_ticked() {
        press("Record the water test");
        fill(true, "");
        press("Record it");

        assertThat(tested()).isTrue();
        var act = db.selectFrom(HANDOFF_ACT)
                .where(HANDOFF_ACT.FOLDER_ID.eq(folder.value()))
                .fetchSingle();
        assertThat(act.getKind()).isEqualTo("test-passed");
        assertThat(act.getLeakDefinition()).isEqualTo(LeakDefinition.ANY_INSIDE.code());
        assertThat(act.getPressurePa()).isEqualTo(137);
        assertThat(act.getMinutes()).isEqualTo(15);
    }

    @Test
    void a_test_that_fails_needs_to_say_where_and_ticks_nothing() {
        press("Record the water test");
        fill(false, " ");
        press("Record it");
        assertThat(find(Dialog.class).single().getElement().getOuterHTML()).contains("Say in the note where it leaks.");
        assertThat(db.fetchCount(HANDOFF_ACT, HANDOFF_ACT.FOLDER_ID.eq(folder.value())))
                .isZero();

        find(TextArea.class).single().setValue("left jamb, at the head");
        press("Record it");

        assertThat(tested()).isFalse();
        var act = db.selectFrom(HANDOFF_ACT)
                .where(HANDOFF_ACT.FOLDER_ID.eq(folder.value()))
                .fetchSingle();
        assertThat(act.getKind()).isEqualTo("test-failed");
        assertThat(act.getNote()).isEqualTo("left jamb, at the head");
    }

    @SuppressWarnings("unchecked")
    private void fill(boolean passed, String note) {
        find(RadioButtonGroup.class).single().setValue(passed);
        find(Select.class).all().stream()
                .filter(select -> "What counted as a leak".equals(select.getLabel()))
                .forEach(select -> select.setValue(LeakDefinition.ANY_INSIDE));
        find(IntegerField.class)
                .all()
                .forEach(field -> field.setValue(field.getLabel().startsWith("Pressure") ? 137 : 15));
        find(TextArea.class).single().setValue(note);
    }

    private void press(String words) {
        find(Button.class).all().stream()
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow()
                .click();
    }

    private boolean tested() {
        return state().doneLines().stream().anyMatch(done -> done.line().steps().contains(Step.WATER_TEST));
    }

    private OpeningState state() {
        return states.of(people.scheduler(), folder, ONE);
    }

    private List<WorkLine> windowLines() {
        return state().list().lines().stream()
                .filter(line ->
                        line.steps().stream().noneMatch(step -> step == Step.WATER_TEST || step == Step.RELEASE))
                .filter(line -> line.trade() == drylap.kernel.Trade.WINDOW)
                .toList();
    }

    private Visit visit(LocalDate date) {
        var at = job.openings().stream()
                .filter(one -> one.id().equals(ONE))
                .findFirst()
                .orElseThrow();
        var start = date.atTime(10, 0).atZone(ZONE).toInstant();
        return new Visit(
                new CrewId("T1"), date, 1, at.facade(), at.level(), ONE, Task.TEST, start, start.plusSeconds(1800));
    }
}
