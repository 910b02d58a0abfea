package drylap.ui;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.select.SelectTester;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import drylap.buildingmodel.ModelText;
import drylap.buildingmodel.ModelText.Unit;
import drylap.kernel.Ruler;
import drylap.planning.JobFolders;
import drylap.ui.planner.ViewTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Where a window schedule becomes openings, by a scheduler who reads Spanish: nothing is English but what the schedule itself writes. */
@ViewTest
class SpanishScheduleViewTests extends SpanishScreen {
    private static final String TITLES = "Mark,RO width,RO height,Floor,Elevation,Material,Method\n";

    @Autowired
    private JobFolders folders;

    @BeforeEach
    void a_folder_lies_on_the_table() {
        folders.save("quay", new QuayFolder().folder());
        reads(people.scheduler(), Ruler.MILLIMETRES);
        knows(
                "XLSX CSV TXT TSV IFC ASTM window schedule xlsx csv",
                "RO width height vinyl Floor Elevation Mark Method Material");
    }

    private void upload(String name, byte[] file) {
        test(UploadTester.class, find(Upload.class).single()).upload(name, "x/y", file);
    }

    private void choose(String label, String item) {
        Select<?> select = find(Select.class).all().stream()
                .filter(one -> label.equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
        test(SelectTester.class, select).selectItem(item);
    }

    @Test
    void the_scheduler_finds_no_english_where_a_schedule_is_put_right_and_taken_in() {
        isSpanish("window-schedule", "Elegir un cuadro de ventanas", "O empiece con un cuadro vacío");
        upload("6.csv", (TITLES + "A,900,1200,1,west,vinyl,A1\nB,6.6.6,1200,1,west,vinyl,A1\n").getBytes(UTF_8));
        shows("Cómo se entiende", "Qué columna contiene qué", "2 filas por corregir", "no tiene unidad; se acepta");
        choose("Los números sin unidad son", "milímetros");
        shows("1 fila por corregir", "no es una medida", "Dejar la fila 3 fuera", "Bien. Se convierte en A (nueva)");
        test(find(Checkbox.class)
                        .withLabel("Dejar la fila 3 fuera: no es una abertura")
                        .single())
                .click();
        shows("Nada está mal.", "Sin contar", "método A1", "west, nivel 1");
        pressed("Cargar las aberturas");
        shows("6.csv se cargó", "Aberturas nuevas: 1", "Planifique de nuevo");
    }

    @Test
    void the_scheduler_finds_no_english_in_what_a_schedule_changes() {
        open("window-schedule");
        upload(
                "6.csv",
                ("Mark,RO width (mm),RO height (mm),Floor,Elevation,Material,Method\n"
                                + "QW2-01,1000,1200,2,west,vinyl,A1\nQW1-01,1300,1500,1,west,wood,A1\n")
                        .getBytes(UTF_8));
        shows(
                "ancho: 1000 mm en lugar de 900 mm",
                "ancho: se queda 1200 mm, el cuadro dice 1300 mm",
                "salvo su método");
        choose("En la lista", "no están en el cuadro");
        shows("La obra las tiene y el cuadro no");
    }

    @Test
    void the_scheduler_finds_no_english_where_a_file_is_none() {
        open("window-schedule");
        upload("6.csv", new byte[] {'P', 'K', 3, 4, 0});
        shows("6.csv: es un archivo ZIP dañado o cortado – se acepta un libro XLSX", "No se cambió nada");
    }

    @Test
    void the_scheduler_finds_no_english_in_what_a_model_says() {
        knows(
                "Ground floor House south west inch Entity Marked by Tag Name Made as Level Storey Building Standing in Position Frame Sill Remarks Left open");
        open("window-schedule");
        upload(
                "6.ifc",
                new ModelText("IFC4", Unit.INCH, "(0.13917310096,0.99026806874)")
                        .storey("Ground floor", 0)
                        .window("W-1", "Ground floor south", 500, 900, 900, 1_200)
                        .bytes());
        shows("IFC4, longitudes en inch, de 25.4 mm cada una.", "El norte verdadero está a", "Elevación mira a 172.0°");
        test(find(TextField.class).all().stream()
                        .filter(one -> one.getLabel().equals("El piso Ground floor es el nivel"))
                        .findFirst()
                        .orElseThrow())
                .setValue("seis");
        shows("se acepta un número entero de 1 a 200");
    }
}
