package drylap.ui;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import com.vaadin.flow.router.QueryParameters;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFiles;
import drylap.forecasts.ForecastReading;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.planning.JobFolders;
import drylap.planning.PlanId;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.RuleRequest;
import drylap.risk.OddsRuns;
import drylap.risk.OddsState;
import drylap.security.Role;
import drylap.sites.Site;
import drylap.ui.planner.ViewTest;
import java.time.Duration;
import java.util.List;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The screens that look ahead or ask what would be otherwise, by a scheduler who reads Spanish: nothing on them is English. */
@ViewTest
class SpanishOutlookViewTests extends SpanishScreen {
    private static final SiteId QUAY = new SiteId("Q");
    private static final Duration LONG = Duration.ofSeconds(60);

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private ForecastFiles files;

    @Autowired
    private ForecastChoices choices;

    @Autowired
    private ChangedRules rules;

    @Autowired
    private OddsRuns odds;

    private FolderId folder = new FolderId(0);
    private PlanId plan = new PlanId(0);

    @BeforeEach
    void a_plan_is_published() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        var made = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        plan = plans.save(folder, made, quay);
        publications.publish(people.scheduler(), folder, plan, null);
    }

    @Override
    List<String> codes() {
        return List.of(
                "drylap outlook",
                "drylap whatif",
                "month, rain_mm, rain_days",
                "cold_days",
                "gust_days",
                "columna site",
                "seis.csv:2 month",
                "seis.csv:2 percent",
                "outlook_months.csv",
                "outlook_facades.csv",
                "outlook_one_more_crew.csv");
    }

    private void a_wet_file_comes() {
        Site site = folders.load(folder).sites().getFirst();
        var text = new StringBuilder(
                "hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n");
        for (int hour = 0; hour < 48; hour++)
            text.append("2026-04-%02dT%02d:00-07:00,%s,5,8,262,12,90%n"
                    .formatted(13 + hour / 24, hour % 24, hour < 15 ? "2,0.9" : "0,0"));
        var who = people.scheduler();
        var read = (ForecastReading.Read) files.look(who, site, text.toString().getBytes(UTF_8));
        files.use(who, site, read.forecast(), choices.of(who, QUAY));
    }

    private void no_file_any_more() {
        var who = people.scheduler();
        choices.choose(
                who,
                new ForecastChoice(QUAY, null, null, 2, choices.of(who, QUAY).version(), "", null));
    }

    @Test
    void the_scheduler_finds_no_english_at_what_a_forecast_changes() {
        a_wet_file_comes();
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish(
                "forecast-change",
                "Qué se abrió y qué se cerró",
                "h cerradas",
                "en el muro west",
                "El pronóstico anterior termina");
        assertThat(ScreenTexts.now()).anyMatch(text -> text.matches("Se rompen? \\d+ visitas? publicadas?"));
        no_file_any_more();
    }

    @Test
    void the_scheduler_finds_no_english_where_no_forecast_is_known() {
        no_file_any_more();
        reads(people.scheduler(), Ruler.MILLIMETRES);
        UI.getCurrent().navigate("forecast-change", QueryParameters.of("site", "M"));
        shows("No se conoce ningún pronóstico de Mill Row");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_odds() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("odds", "Del plan publicado");
        arrives("Entrega de cada fachada");
        shows(
                "Calculadas",
                "En 8 de 10 casos, a más tardar",
                "En qué se apoyan estas probabilidades",
                "sin pronóstico; todo se sortea según su clima (supuesto",
                "Clima de ese día",
                "días de cuadrilla trabajados donde hay");
    }

    @Test
    void who_may_not_ask_finds_no_english_at_old_odds() {
        var who = people.scheduler();
        odds.begin(who, folder, plan);
        Awaitility.await()
                .atMost(LONG)
                .until(() ->
                        odds.state(who, folder, plan).filter(OddsState::holds).isPresent());
        rules.change(who, folder, new RuleRequest(null, Rule.COVER_MIN, 45.0, "seis", 0));
        reads(people.add(Role.SCHEDULER, Reach.of(List.of(QUAY)), null), Ruler.MILLIMETRES);
        isSpanish("odds", "Estas probabilidades son viejas.", "cambió algo: las reglas", "no todas son suyas");
    }

    @Test
    void who_may_not_ask_finds_no_english_where_nothing_was_reckoned() {
        reads(people.add(Role.SCHEDULER, Reach.of(List.of(QUAY)), null), Ruler.MILLIMETRES);
        isSpanish("odds", "todavía no se calcularon. Lo puede pedir");
    }

    @Test
    void the_scheduler_finds_no_english_where_nothing_is_planned() {
        folders.save("bare", new QuayFolder().folder());
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("odds", "Todavía no hay ningún plan cuyas probabilidades");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_season() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("season", "Calculando la temporada de Quay Nine");
        arrives("Falta por hacer");
        shows(
                "Cada fachada con plazo, a tiempo:",
                "clima supuesto",
                "Una cuadrilla de ventanas más",
                "Mes por mes",
                "no promete ningún día");
        upload("month,rain_mm,rain_days\n13,60,12\n");
        shows("seis.csv no se cargó; no se cambió nada.", "se acepta un número");
        upload(year());
        arrives("Se guardan normales mensuales de Quay Nine");
        shows("normales mensuales");
        pressed("Quitar las normales");
        shows("Se quitaron las normales de Quay Nine.");
    }

    private static String year() {
        var rows = new StringBuilder("month,rain_mm,rain_days\n");
        for (int month = 1; month <= 12; month++) rows.append(month).append(",60,12\n");
        return rows.toString();
    }

    @Test
    void the_scheduler_finds_no_english_at_what_would_be_otherwise() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("what-if", "Todavía no hay ningún escenario", "Nombre de la cuadrilla nueva", "Qué sería distinto");
        pressed("Comparar");
        shows("hace falta al menos uno");
        for (int kind = 0; kind < kinds().getListDataView().getItemCount(); kind++) {
            kinds().setValue(kinds().getListDataView().getItem(kind));
            pressed("Agregar el cambio");
            shows("Qué sería distinto");
        }
        assertThat(ScreenTexts.now()).anyMatch(text -> text.startsWith("Por ciento: está en blanco"));
        typed("Por ciento", "seis");
        pressed("Agregar el cambio");
        shows("«seis» no es un número entero; se acepta un número entero de -100 a 1000.");
        typed("Por ciento", "20");
        pressed("Agregar el cambio");
        shows("la lluvia de cada hora es 20 % más", "Quitar el escenario Escenario 1");
        upload("scenario,change,percent\nseis,rain by percent,4000\n");
        shows("seis.csv no se cargó; no se cambió nada.", "se acepta un número");
    }

    @Test
    void who_does_not_see_every_site_finds_no_english_at_what_would_be_otherwise() {
        reads(people.add(Role.SCHEDULER, Reach.of(List.of(QUAY)), null), Ruler.MILLIMETRES);
        isSpanish("what-if", "no todas las de esta son suyas");
    }

    @SuppressWarnings("unchecked")
    private Select<Object> kinds() {
        return find(Select.class).all().stream()
                .filter(one -> "Qué sería distinto".equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
    }

    private void upload(String text) {
        test(UploadTester.class, find(Upload.class).single()).upload("seis.csv", "text/csv", text.getBytes(UTF_8));
    }

    private static void arrives(String words) {
        Awaitility.await().pollInSameThread().atMost(LONG).untilAsserted(() -> {
            var session = UI.getCurrent().getSession();
            session.unlock(); // what is pushed arrives
            session.lock();
            assertThat(ScreenTexts.now()).anyMatch(text -> text.contains(words));
        });
    }
}
