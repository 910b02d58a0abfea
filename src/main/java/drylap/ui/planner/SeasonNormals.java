package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.ui.components.Uploads;
import drylap.ui.drawn.FolderShown;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes a file of monthly normals for a site, whole or not at all, and gives them up again. */
final class SeasonNormals extends Div {
    private static final int LARGEST_BYTES = 1 << 20;

    private final transient SeasonDesk desk;
    private final transient Person who;
    private final transient Runnable after;
    private final Div outcome = new Div();
    private final Paragraph held = new Paragraph();
    private final Button remove = new Button("Remove the normals", _ -> remove());
    private transient @Nullable FolderShown shown;
    private transient @Nullable Site site;

    SeasonNormals(SeasonDesk desk, Person who, Runnable after) {
        this.desk = desk;
        this.who = who;
        this.after = after;
        addClassNames("panel", "normals");
        var upload = new Upload(Uploads.inMemory(LARGEST_BYTES, this::read));
        upload.setAcceptedFileTypes(".csv");
        upload.setMaxFiles(1);
        upload.setMaxFileSize(LARGEST_BYTES);
        upload.setUploadButton(new Button("Choose a CSV file"));
        outcome.getElement().setAttribute("role", "status");
        add(
                held,
                new Details(
                        "Bring in monthly normals",
                        new Paragraph(
                                "One row a month, as for the command \"drylap outlook\": month, rain_mm, rain_days, "
                                        + "and where they are known cold_days and gust_days. A row may name another site in a "
                                        + "column site. They take the place of all that a named site had."),
                        upload),
                outcome,
                remove);
    }

    void show(FolderShown now, Site of) {
        if (site == null || !site.id().equals(of.id())) outcome.removeAll();
        shown = now;
        site = of;
        boolean has = desk.hasNormals(who, now.stored().id(), of);
        held.setText(
                has
                        ? "Monthly normals of %s are kept, and drawn from beyond the forecast.".formatted(of.name())
                        : "No monthly normals of %s are kept.".formatted(of.name()));
        remove.setVisible(has && desk.mayChange(who, of));
    }

    /** Called with the page locked, once the file has come. */
    void read(String name, byte[] bytes) {
        if (shown == null || site == null) return;
        List<String> wrong = desk.bring(who, shown, site, name, bytes);
        Panels.tell(outcome, name, wrong);
        if (wrong.isEmpty()) after.run();
    }

    private void remove() {
        if (shown == null || site == null) return;
        desk.remove(who, shown, site);
        outcome.removeAll();
        outcome.add(new Paragraph("The normals of %s were removed.".formatted(site.name())));
        after.run();
    }
}
