package drylap.ui;

import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.FORECAST_FETCH;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.select.SelectTester;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import drylap.forecasts.FetchOutcome;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFiles;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastWords;
import drylap.kernel.FolderId;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.security.Person;
import drylap.sites.Compass;
import drylap.ui.planner.ViewTest;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Set;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Sites, their forecasts and what is put in by hand, by a scheduler who reads Spanish: nothing on these screens is English. */
@ViewTest
class SpanishSiteViewTests extends SpanishScreen {
    private static final SiteId QUAY = new SiteId("Q");
    private static final String HEADER =
            "hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n";

    @Autowired
    private JobFolders folders;

    @Autowired
    private ForecastChoices choices;

    @Autowired
    private ForecastFiles files;

    @Autowired
    private DSLContext db;

    private final JobFolder quay = new QuayFolder().folder();
    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_folder_lies_on_the_table() {
        folder = folders.save("quay", quay);
    }

    @AfterEach
    void nobody_wants_a_forecast() {
        db.deleteFrom(FORECAST_FETCH)
                .where(FORECAST_FETCH.SITE.eq(QUAY.value()))
                .execute();
        db.deleteFrom(FORECAST_CHOICE)
                .where(FORECAST_CHOICE.SITE.eq(QUAY.value()))
                .execute();
    }

    @Test
    void the_scheduler_finds_no_english_at_the_sites() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        isSpanish("sites", "abiertas a la lluvia ahora: 1", "Cómputo de lo que queda", "persiste la lluvia", "Al muro");
        pressedFor("Elegir la fuente del pronóstico de Quay Nine");
        Select<?> source = find(Select.class).all().stream()
                .filter(one -> "Fuente".equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
        test(SelectTester.class, source).selectItem("Servicio Meteorológico Nacional de EE. UU., punto de malla");
        knows("SEW");
        shows("Pronóstico de Quay Nine", "Celda de la malla", "Desde el próximo plan");
        find(IntegerField.class).single().setValue(99);
        pressed("Guardar");
        shows("cada 99 horas; se acepta de 1 a 24");
        find(IntegerField.class).single().setValue(2);
        typed("Celda de la malla", "seis");
        pressed("Guardar");
        shows("“seis” no es una celda de la malla");
    }

    private void upload(String type, byte[] file) {
        String name = type.equals("text/csv") ? "6.csv" : "6.zip";
        test(UploadTester.class, find(Upload.class).single()).upload(name, type, file);
    }

    @Test
    void the_scheduler_finds_no_english_in_what_is_kept_of_forecasts_and_fetches() {
        Person who = reads(people.scheduler(), Ruler.MILLIMETRES);
        bringIn(who);
        fetched("127.0.0.1", FetchOutcome.UNANSWERED, ForecastWords.ASKED_TOO_OFTEN);
        isSpanish(
                "sites",
                "Archivo de pronóstico cargado",
                "sin ráfagas, así que en su lugar está 1.6 veces el viento medio: 1 hora desde",
                "sin respuesta (127.0.0.1 recibe demasiadas consultas (429))");
    }

    /** Without a gust, so that something is remarked. */
    private void bringIn(Person who) {
        String hour = LocalDate.now(ZoneOffset.UTC).plusDays(1) + "T12:00Z";
        var site = quay.sites().getFirst();
        var read = files.look(who, site, (HEADER + hour + ",1.2,0.9,5,,200,9,80\n").getBytes(UTF_8));
        files.use(who, site, ((ForecastReading.Read) read).forecast(), choices.of(who, QUAY));
    }

    private void fetched(String host, FetchOutcome outcome, ForecastWords words) {
        Instant now = Instant.now();
        db.insertInto(FORECAST_FETCH)
                .set(FORECAST_FETCH.SITE, QUAY.value())
                .set(FORECAST_FETCH.TRIED_AT, now)
                .set(FORECAST_FETCH.OUTCOME, outcome.code())
                .set(FORECAST_FETCH.WORDS, words.with(host))
                .set(FORECAST_FETCH.DUE_AT, now.plusSeconds(7200))
                .execute();
    }

    @Test
    void the_scheduler_finds_no_english_where_a_forecast_file_is_brought_in() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        knows(HEADER, "csv");
        open("sites");
        pressedFor("Cargar un archivo con el pronóstico de Quay Nine");
        shows("Cargar un pronóstico de Quay Nine", "Primero se ve lo que dice");
        upload("text/csv", (HEADER + "2026-04-13T07:00-07:00,6.6.6,0.9,5,8,400,9,80\n").getBytes(UTF_8));
        shows("2 problemas", "no es un número (6.6.6)", "un número de 0 a 360 (grados)");
        upload("text/csv", (HEADER + "2026-04-13T07:00-07:00,6,,5,8,40,9,80\n").getBytes(UTF_8));
        shows("1 hora, de lun 13 abr 07:00", "Todo ya pasó", "sin probabilidad de lluvia", "Ráfaga más fuerte");
    }

    @Test
    @SuppressWarnings("unchecked")
    void the_scheduler_finds_no_english_at_sites_of_their_own() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        knows("Mill Lane", "Etc UTC");
        isSpanish("own-sites", "Una obra nueva", "Zona horaria", "Un muro más", "Corregir la obra", "desde el norte");
        typed("Nombre de la obra", "Seis");
        pressed("Guardar la obra");
        shows("Lugar: latitud, longitud: está en blanco; se acepta: latitud y luego longitud");
        typed("Lugar: latitud, longitud", "41.16, 99");
        pressed("Guardar la obra");
        shows("del sol en la longitud 99", "al oeste de Greenwich");
        typed("Lugar: latitud, longitud", "47.6, -2.3");
        ((CheckboxGroup<Compass>) find(CheckboxGroup.class).all().getFirst()).setValue(Set.of(Compass.WEST));
        pressed("Guardar la obra");
        shows("Seis está guardada", "Siguiente: sus aberturas");
        assertThat(folders.load(folder).facades())
                .extracting(wall -> wall.id().facade())
                .contains("Oeste");
    }

    @Test
    void the_scheduler_finds_no_english_at_crews_of_their_own() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        knows("window");
        isSpanish(
                "own-crews", "Una cuadrilla nueva", "Viene los días", "Otros días, o ninguno", "cuadrilla de barrera");
        typed("Hasta", "6");
        typed("Nombre de la cuadrilla", "Seis");
        pressed("Guardar la cuadrilla");
        shows("la jornada termina a las 06:00 y empieza a las 07:00; se acepta");
        typed("Hasta", "seis");
        pressed("Guardar la cuadrilla");
        shows("Hasta: “seis” no es una hora del día");
        typed("Hasta", "15:30");
        typed("Cuántas personas, no hace falta", "seis");
        pressed("Guardar la cuadrilla");
        shows("«seis» no es un número entero; se acepta un número entero de 1 a 20");
        typed("Cuántas personas, no hace falta", "6");
        typed("Nombre de la cuadrilla", "W1");
        pressed("Guardar la cuadrilla");
        shows("“W1” ya está tomado");
        typed("Nombre de la cuadrilla", "Seis");
        pressed("Guardar la cuadrilla");
        shows("La cuadrilla Seis está guardada", "6 personas");
    }

    @Test
    void the_scheduler_finds_no_english_at_the_job_folders() {
        reads(people.scheduler(), Ruler.MILLIMETRES);
        knows("sites facades openings crews shifts labour travel forecast rules published csv zip");
        isSpanish("job-folders", "Elegir un archivo ZIP", "Carpetas de obra hasta ahora", "Poner sobre la mesa");
        upload("application/zip", "6".getBytes(UTF_8));
        shows("6.zip no se cargó", "1 problema; no se cambió nada", "no es un archivo ZIP que se pueda leer");
        upload(
                "application/zip",
                new QuayFolder()
                        .with("openings.csv", "QW1-02,1200", "QW1-02,6.6")
                        .zip());
        knows("width");
        shows("no es un número entero: 6.6", "un número entero de 100 a 20000 (mm)");
        upload("application/zip", new QuayFolder().and("6.csv", "6").zip());
        shows("6.zip se cargó", "ver la hoja de la semana", "6.csv no es un archivo de una carpeta de obra");
    }
}
