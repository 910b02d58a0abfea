package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.components.UploadWords;
import drylap.ui.components.Uploads;
import drylap.ui.drawn.FolderShown;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes a file of monthly normals for a site, whole or not at all, and gives them up again. */
final class SeasonNormals extends Div {
    private static final int LARGEST_BYTES = 1 << 20;

    private final transient Speech say;
    private final transient SeasonDesk desk;
    private final transient Person who;
    private final transient Runnable after;
    private final Div outcome = new Div();
    private final Paragraph held = new Paragraph();
    private final Button remove = new Button();
    private transient @Nullable FolderShown shown;
    private transient @Nullable Site site;

    SeasonNormals(Speech say, SeasonDesk desk, Person who, Runnable after) {
        this.say = say;
        this.desk = desk;
        this.who = who;
        this.after = after;
        addClassNames("panel", "normals");
        remove.setText(say.it("Remove the normals"));
        remove.addClickListener(_ -> remove());
        var upload = new Upload(Uploads.inMemory(LARGEST_BYTES, this::read));
        upload.setAcceptedFileTypes(".csv");
        upload.setMaxFiles(1);
        upload.setMaxFileSize(LARGEST_BYTES);
        upload.setUploadButton(new Button(say.it("Choose a CSV file")));
        upload.setI18n(UploadWords.file(say, ".csv"));
        outcome.getElement().setAttribute("role", "status");
        add(
                held,
                new Details(
                        say.it("Bring in monthly normals"),
                        new Paragraph(say.it(
                                "One row a month, as for the command {0}: {1}, and where they are known {2}. "
                                        + "A row may name another site in a column {3}. They take the place of all "
                                        + "that a named site had.",
                                "\"drylap outlook\"",
                                "month, rain_mm, rain_days",
                                say.it("{0} and {1}", "cold_days", "gust_days"),
                                "site")),
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
                        ? say.it("Monthly normals of {0} are kept, and drawn from beyond the forecast.", of.name())
                        : say.it("No monthly normals of {0} are kept.", of.name()));
        remove.setVisible(has && desk.mayChange(who, of));
    }

    /** Called with the page locked, once the file has come. */
    void read(String name, byte[] bytes) {
        if (shown == null || site == null) return;
        List<Saying> wrong = desk.bring(who, shown, site, name, bytes);
        Panels.tell(say, outcome, name, wrong);
        if (wrong.isEmpty()) after.run();
    }

    private void remove() {
        if (shown == null || site == null) return;
        desk.remove(who, shown, site);
        outcome.removeAll();
        outcome.add(new Paragraph(say.it("The normals of {0} were removed.", site.name())));
        after.run();
    }
}
