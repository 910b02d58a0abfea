package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.upload.Upload;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoiceResult;
import drylap.forecasts.ForecastReader;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.ReadForecast;
import drylap.kernel.Rules;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.components.UploadWords;
import drylap.ui.components.Uploads;
import drylap.ui.drawn.ForecastFile;
import drylap.ui.drawn.ForecastFile.Day;
import drylap.ui.drawn.ForecastFile.Wrong;
import org.jspecify.annotations.Nullable;

/** Brings in a forecast file for one site: it is shown first, and used whole or not at all. */
final class ForecastFileDialog extends Dialog {
    private final transient ForecastDesk desk;
    private final transient Person who;
    private final transient Site site;
    private final transient Rules rules;
    private final transient Runnable after;
    private final Div outcome = new Div();
    private final Button use;
    private final transient Speech say;
    private transient ForecastChoice seen;
    private transient @Nullable ReadForecast read;

    ForecastFileDialog(ForecastDesk desk, Person who, Site site, Rules rules, Runnable after) {
        this.desk = desk;
        this.who = who;
        this.site = site;
        this.rules = rules;
        this.after = after;
        say = new Speech(who.reading());
        use = new Button(say.it("Use this forecast"), _ -> use());
        seen = desk.choice(who, site.id());
        setHeaderTitle(say.it("Bring in a forecast of {0}", site.name()));
        addClassName("forecast-file");
        var upload = new Upload(Uploads.inMemory(ForecastReader.MOST_BYTES, this::read));
        upload.setAcceptedFileTypes(".csv");
        upload.setMaxFiles(1);
        upload.setMaxFileSize(ForecastReader.MOST_BYTES);
        upload.setUploadButton(new Button(say.it("Choose a CSV file")));
        upload.setI18n(UploadWords.file(say, "CSV"));
        outcome.getElement().setAttribute("role", "status");
        add(
                new Paragraph(say.it(
                        "A file with the columns of a job folder's forecast.csv; a column for the site may be left "
                                + "out, and rows of other sites are passed over. You see first what it says.")),
                upload,
                outcome);
        use.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        use.setEnabled(false);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), use);
    }

    /** Called with the page locked, once the file has come. */
    void read(String name, byte[] bytes) {
        outcome.removeAll();
        read = null;
        switch (desk.look(who, site, bytes)) {
            case ForecastReading.Refused refused -> refuse(name, refused);
            case ForecastReading.Read(var forecast) -> {
                read = forecast;
                preview(name, desk.file(say, forecast, site, rules));
            }
        }
        use.setEnabled(read != null);
    }

    private void refuse(String name, ForecastReading.Refused refused) {
        int many = refused.problems().size() + refused.more();
        trouble(say.it(
                "{0} cannot be used: {1, plural, one {# problem} other {# problems}}. Nothing was changed.",
                name, many));
        NativeTable table = Panels.table(
                say.it("Line"), say.it("Column"), say.it("What is wrong"), say.it("What would be accepted"));
        refused.problems().stream()
                .map(problem -> Wrong.of(say, problem))
                .forEach(wrong -> Panels.row(
                        table,
                        Panels.text(wrong.line()),
                        Panels.text(wrong.column()),
                        Panels.text(wrong.wrong()),
                        Panels.text(wrong.accepted())));
        outcome.add(scrolled(table));
        if (refused.more() > 0) outcome.add(new Paragraph(say.it("… and {0} more.", refused.more())));
    }

    private void preview(String name, ForecastFile file) {
        outcome.add(new Paragraph(say.it("{0} can be used: {1}.", name, file.summary())));
        if (file.over())
            trouble(say.it(
                    "All of it is past: hours from now on would be marked beyond the forecast and count as open."));
        if (!file.remarks().isEmpty())
            outcome.add(
                    new UnorderedList(file.remarks().stream().map(ListItem::new).toArray(ListItem[]::new)));
        NativeTable table = Panels.table(
                say.it("Day"),
                say.it("Hours"),
                say.it("Rain"),
                say.it("Hours of rain"),
                say.it("Strongest gust"),
                say.it("Temperature"));
        file.days().forEach(day -> row(table, day));
        outcome.add(scrolled(table));
    }

    private static void row(NativeTable table, Day day) {
        Panels.row(
                table,
                Panels.text(day.day(), "strong"),
                Panels.text(String.valueOf(day.hours())),
                Panels.text(day.rain()),
                Panels.text(String.valueOf(day.rainHours())),
                Panels.text(day.gust()),
                Panels.text(day.temperature()));
    }

    private Div scrolled(NativeTable table) {
        var scrolled = new Div(table);
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement().setAttribute("aria-label", say.it("What the file says"));
        return scrolled;
    }

    private void use() {
        if (read == null) return;
        switch (desk.use(who, site, read, seen)) {
            case ForecastChoiceResult.Chosen _ -> {
                close();
                after.run();
            }
            case ForecastChoiceResult.Refused(var why) -> trouble(say.it(why));
            case ForecastChoiceResult.ChangedMeanwhile(var newer) -> {
                seen = newer;
                trouble(say.it(
                        "{0} chose another source meanwhile. Nothing was changed. Use the file all the same, or cancel.",
                        newer.by()));
            }
        }
    }

    private void trouble(String words) {
        var said = new Paragraph(words);
        said.addClassName("trouble");
        outcome.addComponentAsFirst(said);
    }
}
