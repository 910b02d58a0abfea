package drylap.ui;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.router.QueryParameters;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Ruler;
import drylap.kernel.Trade;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.LeftOut;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import drylap.speech.Part;
import drylap.ui.components.VisitChosen;
import drylap.ui.components.WeekSheet;
import drylap.ui.planner.ViewTest;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The screens on which a plan is looked at, by a scheduler who reads Spanish: nothing on them is English. */
@ViewTest
class SpanishPlanViewTests extends SpanishScreen {
    private static final Part.When MONDAY_NOON = new Part.When(LocalDateTime.of(2026, 4, 13, 12, 0));

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    private final JobFolder quay = new QuayFolder().folder();

    @Autowired
    private Publications publications;

    private FolderId folder = new FolderId(0);
    private PlanId first = new PlanId(0);

    @BeforeEach
    void a_planned_folder_lies_on_the_table() {
        folder = folders.save("quay", quay);
        first = plans.save(folder, plan(quay));
        reads(people.scheduler(), Ruler.MILLIMETRES);
    }

    /** A visit for each first task at an opening; each of the others is left out, for one reason after the other. */
    private static Plan plan(JobFolder quay) {
        Instant start = Instant.parse("2026-04-13T14:00:00Z");
        List<Visit> visits = new ArrayList<>();
        List<UnplannedTask> left = new ArrayList<>();
        for (var opening : quay.openings())
            for (var task : opening.tasks()) {
                if (task != opening.tasks().getFirst()) {
                    var reason = UnplannedReason.values()[left.size() % UnplannedReason.values().length];
                    var why = LeftOut.values()[left.size() % LeftOut.values().length];
                    left.add(new UnplannedTask(opening.id(), task, reason, detail(why)));
                    continue;
                }
                var from = start.plus(Duration.ofHours(visits.size()));
                var crew = new CrewId(task.trade() == Trade.WINDOW ? "W1" : task.trade() == Trade.WRAP ? "P1" : "C1");
                visits.add(new Visit(
                        crew,
                        LocalDate.of(2026, 4, 13),
                        visits.size() + 1,
                        opening.facade(),
                        opening.level(),
                        opening.id(),
                        task,
                        from,
                        from.plusSeconds(1200)));
            }
        var lines = Arrays.stream(LedgerTerm.values())
                .map(term -> new Ledger.Line(term, 2, 3, 6))
                .toList();
        return new Plan(
                start,
                start.plus(Duration.ofHours(30)),
                visits,
                left,
                List.of(new CoverNow(new OpeningId("QW1-01"), null, start.plusSeconds(7200), 40)),
                List.of(),
                new Ledger(lines, 0, 5, 6L * lines.size()));
    }

    private static String detail(LeftOut why) {
        return why == LeftOut.NO_TRADE ? why.with("siding") : why.with(MONDAY_NOON, MONDAY_NOON, MONDAY_NOON);
    }

    @Test
    void the_scheduler_finds_no_english_at_the_walls_whatever_the_opening_is_like() {
        for (var opening : quay.openings())
            isSpanish("walls", opening.id(), "Traslapes de " + opening.id(), "Lo que marca la cuadrilla", "En el plan");
        isSpanish("walls", new OpeningId("QW1-01"), "Poner barrera", "sin planificar", "Entrega de QW1-01");
        isSpanish("walls", new OpeningId("MS1-02"), "marco de aluminio: pide una bandeja", "una segunda barrera");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_take_off() {
        isSpanish("take-off", "Lo que hace falta", "Lista de cortes", "En papel");
        UI.getCurrent().navigate("take-off", QueryParameters.simple(java.util.Map.of("site", "Q", "extent", "whole")));
        shows("Quay Nine, muros completos", "Tapajuntas de jamba");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_open_hours() {
        isSpanish("open-hours", "Lluvia con viento en los muros de Quay Nine", "Sin pronóstico desde ahora");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_week_sheet() {
        isSpanish("week-sheet", "Cubrir ahora", "Sin planificar", "Cuenta", "cuadrilla de ventanas", "Averiguar");
        pressed("Publicar esta propuesta");
        shows("Publicado", "Hoja del día de la cuadrilla");
    }

    @Test
    void the_scheduler_finds_no_english_in_what_a_proposal_changes() {
        publications.publish(people.scheduler(), folder, first, null);
        plans.save(folder, Planner.standard().plan(quay, new PlanRequest(null, null, 100L, 1), _ -> {}, () -> false));
        isSpanish("week-sheet", "Frente al plan publicado", "Abajo: una propuesta", "Cómputo de material de un día");
        pressed("Ver el plan publicado");
        shows("Abajo: el plan publicado");
    }

    @Test
    void the_scheduler_finds_no_english_where_a_visit_is_moved() {
        open("week-sheet");
        ComponentUtil.fireEvent(
                find(WeekSheet.class).single(),
                new VisitChosen(find(WeekSheet.class).single(), true, "MS1-01", "install"));
        shows("Mover", "Sin fijar: los planes posteriores la pueden mover", "Aquí es donde está");
        find(TimePicker.class).single().setValue(LocalTime.of(23, 0));
        shows("Rompe reglas en", "una tarea cae dentro del turno de su cuadrilla");
    }
}
