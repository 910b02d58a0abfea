package drylap.ui;

import static drylap.persistence.jooq.Tables.CALENDAR_LINK;
import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.JOB;

import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.select.SelectTester;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.Ruler;
import drylap.planning.ChangedRules;
import drylap.planning.JobFolders;
import drylap.planning.RuleRequest;
import drylap.security.Role;
import drylap.ui.planner.ViewTest;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Each screen of whoever plans that speaks Spanish, walked through by someone who reads Spanish: nothing on it is English. */
@ViewTest
class SpanishPlannerViewTests extends SpanishScreen {
    @Autowired
    private JobFolders folders;

    @Autowired
    private ChangedRules rules;

    @Autowired
    private DSLContext db;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_folder_is_there() {
        folder = folders.save("quay", new QuayFolder().folder());
    }

    @Test
    void the_scheduler_finds_no_english_at_the_rules_and_their_help() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("rules", "Reglas de todas las obras", "Un muro mojado se seca durante", "mandan las instrucciones");
        pressedFor("Cambiar: Un muro mojado se seca durante");
        shows("Ahora 3 h, valor usual", "se pierden más horas después de la lluvia");
        typed("Valor", "seis");
        pressed("Guardar");
        shows("“seis” no es un número");
        typed("Valor", "100");
        pressed("Guardar");
        shows("diga por qué, en 1 a 200 caracteres");
        typed("Motivo", "seis");
        pressed("Guardar");
        shows("se acepta un número de 0 a 72 h");
        rules.change(people.scheduler(), folder, new RuleRequest(null, Rule.DRYING_H, 9.0, "seis", 0));
        typed("Valor", "4");
        pressed("Guardar");
        shows("Mientras tanto", "No se guardó nada suyo");
        pressed("Guardar");
        shows("puesto por Test scheduler");
        pressedFor("Cambiar: Un muro mojado se seca durante");
        shows("Volver al valor usual");
    }

    @Test
    void whoever_looks_after_the_machine_finds_no_english_at_how_it_runs() {
        reads(people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null), Ruler.MILLIMETRES);
        // what other tests left: nodes, reasons and sources have names of their own
        db.update(JOB)
                .set(JOB.STATE, "stopped")
                .setNull(JOB.FAILURE)
                .set(JOB.ENDED_AT, JOB.ASKED_AT)
                .where(JOB.STATE.in("queued", "running", "failed"))
                .execute();
        db.deleteFrom(FORECAST_CHOICE).execute();
        isSpanish("how-it-runs", "¿Está todo bien?", "La base de datos ocupa", "Fuentes de pronósticos");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_rules_of_a_site() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        open("rules");
        test(SelectTester.class, find(Select.class).withClassName("place").single())
                .selectItem("Quay Nine");
        shows(
                "Reglas de Quay Nine",
                "Puntos de espera",
                "como en todas partes: valor usual",
                "se quita antes de guardar");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_crews() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        db.deleteFrom(CALENDAR_LINK).execute();
        isSpanish("crews", "cuadrilla de barrera", "Minutos de instalación", "Calendario: sin enlace", "descanso de");
        pressedFor("Agregar una ausencia de la cuadrilla W1");
        pressed("Guardar");
        shows("La cuadrilla W1 está ausente", "Todo el día", "diga por qué, en 1 a 200 caracteres");
        typed("Motivo", "seis");
        pressed("Guardar");
        shows("ausente todo el día: seis (Test scheduler", "no viene");
        pressedFor("Hacer un enlace de calendario en Español para la cuadrilla W1");
        find(Span.class).withClassName("secret").single().setText("");
        shows("Se muestra ahora y nunca más", "una suscripción", "Copiar");
        pressed("Hecho");
        shows("en Español", "todavía sin leer");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_start() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("start", "Una obra con su lugar", "El plan publicado", "hecho", "5 aberturas");
    }

    @Test
    void the_administrator_finds_no_english_at_the_start() {
        reads(people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null), Ruler.MILLIMETRES);
        isSpanish("start", "Alguien que planifique", "Cuentas para las cuadrillas");
    }
}
