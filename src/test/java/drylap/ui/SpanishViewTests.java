package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.router.QueryParameters;
import drylap.handoff.HandoffRequest;
import drylap.handoff.Releases;
import drylap.handoff.Takeovers;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.planning.JobFolders;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.progress.OpeningStates;
import drylap.roughopening.RoughPlace;
import drylap.security.Person;
import drylap.security.Role;
import drylap.speech.Speech;
import drylap.ui.planner.ViewTest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Each screen of crews and of the trade that follows that speaks Spanish, walked through by someone who reads Spanish: nothing on it is English. */
@ViewTest
class SpanishViewTests extends SpanishScreen {
    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    private static final OpeningId DONE = new OpeningId("QW1-02");

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private OpeningStates states;

    @Autowired
    private Releases releases;

    @Autowired
    private Takeovers takeovers;

    @Autowired
    private Clock clock;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_plan_of_today_is_published() {
        var job = new QuayFolder().folder();
        folder = folders.save("quay", job);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZONE);
        List<Visit> visits = new java.util.ArrayList<>();
        for (var opening : job.openings())
            for (var task : opening.tasks()) {
                var start = today.atTime(10, 0).atZone(ZONE).toInstant().plusSeconds(1800L * visits.size());
                visits.add(new Visit(
                        new drylap.kernel.CrewId(task.trade() == drylap.kernel.Trade.WINDOW ? "W1" : "P1"),
                        today,
                        visits.size() + 1,
                        opening.facade(),
                        opening.level(),
                        opening.id(),
                        task,
                        start,
                        start.plusSeconds(1200)));
            }
        Instant first = visits.getFirst().start();
        var plan = new Plan(
                first,
                first.plus(Duration.ofDays(3)),
                visits,
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
        publications.publishSample(folder, plans.save(folder, plan));
    }

    @Test
    void the_window_crew_finds_no_english_on_its_day() {
        reads(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"), Ruler.MILLIMETRES);
        isSpanish("my-day", "Mi día", "Carga para este día", "Nunca", "método B1");
        pressed("Día siguiente");
        isSpanish("rain-call", "Aviso de lluvia", "Esta lista no manda subir a nadie");
        isSpanish("account", "Mi cuenta", "Idioma", "Salir en todas partes");
    }

    @Test
    void the_window_crew_finds_no_english_where_a_rough_opening_is_measured() {
        reads(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"), Ruler.MILLIMETRES);
        UI.getCurrent()
                .navigate(
                        "rough-opening",
                        QueryParameters.simple(
                                Map.of("folder", String.valueOf(folder.value()), "opening", DONE.value())));
        shows("Vano QW1-02", "Todavía no se ha medido", "Medirlo", "Diagonales", "trabajo en altura");
        pressed("Anotar estas medidas");
        shows("está en blanco; se acepta");
        for (var place : RoughPlace.values()) {
            String value = !place.side() ? "6" : place.code().startsWith("diagonal") ? "1414" : "1000";
            typed(spanish(place), value + " mm");
        }
        pressed("Anotar estas medidas");
        shows("no cabe", "fuera de plomo", "Medirlo otra vez");
    }

    private static String spanish(RoughPlace place) {
        return new Speech(Reading.USUAL.in(Language.SPANISH)).it(place.words());
    }

    @Test
    void the_trade_that_follows_finds_no_english_at_its_aprons_and_records() {
        release();
        reads(people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "P1"), Ruler.MILLIMETRES);
        isSpanish("aprons", "babero listo", "Aceptar la liberada", "Días de cuadrilla reservados");
        isSpanish("aprons", DONE, "Babero de QW1-02", "Devolverla…");
        pressed("Devolverla…");
        shows("Por qué", "Qué está mal, en sus palabras");
        giveBack();
        isSpanish("aprons", DONE, "devuelta");
        isSpanish("records", "Actas de entrega", "QW1-02");
        isSpanish("record/" + lastRecord(), "De mano en mano", "aguanta lluvia ligera");
    }

    @Test
    void whoever_measures_in_inches_reads_inches() {
        reads(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"), Ruler.INCHES);
        open("my-day");
        // 900 mm are 35 7/16 inches and 1200 mm 47 1/4, to the nearest sixteenth
        assertThat(ScreenTexts.now())
                .anyMatch(text -> text.contains("35 7/16 × 47 1/4 pulg"))
                .noneMatch(text -> text.contains("900 × 1200 mm"));
    }

    private void release() {
        var who = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
        assertThat(releases.release(who, request(who)).done()).isTrue();
    }

    private void giveBack() {
        var who = people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "P1");
        assertThat(takeovers
                        .giveBack(who, request(who), drylap.handoff.ReturnReason.NOT_CLEAN, null)
                        .done())
                .isTrue();
    }

    private HandoffRequest request(Person who) {
        long version = states.of(who, folder, DONE).version();
        return new HandoffRequest(UUID.randomUUID(), folder, Map.of(DONE, version), "", List.of());
    }

    private long lastRecord() {
        return records.of(people.scheduler(), folder, 1).getFirst().id();
    }

    @Autowired
    private drylap.handoff.HandoffRecords records;
}
