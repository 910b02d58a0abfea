package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.kernel.SiteId;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.SiteForecast;

/** What a site is planned by, how the last fetch ended, and the ways to choose a source and to fetch now. */
final class ForecastPanel extends Div {
    private final transient Speech say;
    private final Paragraph said = new Paragraph();

    ForecastPanel(
            ForecastDesk desk, Person who, FolderShown shown, SiteId site, SiteForecast forecast, Runnable after) {
        say = new Speech(who.reading());
        String name = shown.site(site).name();
        addClassName("site-forecast");
        add(new Paragraph(forecast.planned()));
        if (!forecast.fetched().isEmpty()) add(new Paragraph(forecast.fetched()));
        if (!forecast.remarks().isEmpty()) add(remarks(forecast));
        add(new LastingPanel(desk.lasting(), who, shown, site, forecast.lasting(), after));
        var changed = ForecastChangeView.link(site, say.it("What changed since the forecast before"));
        changed.getElement().setAttribute("aria-label", "%s: %s".formatted(changed.getText(), name));
        add(changed);
        if (!desk.mayChoose(who, site)) return;
        var choose = new Button(
                say.it("Choose the source"),
                _ -> new ForecastDialog(desk, who, desk.choice(who, site), name, after).open());
        choose.setAriaLabel(say.it("Choose the source of the forecast of {0}", name));
        add(choose);
        var bringIn = new Button(
                say.it("Bring in a file"),
                _ -> new ForecastFileDialog(
                                desk,
                                who,
                                shown.site(site),
                                shown.folder().rules().at(site),
                                after)
                        .open());
        bringIn.setAriaLabel(say.it("Bring in a file of the forecast of {0}", name));
        if (forecast.source() != null && forecast.source().fetched()) add(fetch(desk, who, site, name, forecast));
        add(bringIn);
        said.getElement().setAttribute("role", "status");
        said.setVisible(false);
        add(said);
    }

    private UnorderedList remarks(SiteForecast forecast) {
        var list = new UnorderedList();
        list.getElement().setAttribute("aria-label", say.it("Remarks on the forecast"));
        forecast.remarks().forEach(remark -> list.add(new ListItem(remark)));
        return list;
    }

    private Button fetch(ForecastDesk desk, Person who, SiteId site, String name, SiteForecast forecast) {
        var fetch = new Button(
                say.it("Fetch now"),
                _ -> tell(
                        desk.fetch(who, site)
                                ? say.it("Being fetched; what comes of it shows here.")
                                : say.it("The source asked not to be asked yet.")));
        fetch.setAriaLabel(say.it("Fetch now the forecast of {0}", name));
        fetch.setEnabled(!forecast.waits());
        fetch.setDisableOnClick(true);
        return fetch;
    }

    private void tell(String words) {
        said.setText(words);
        said.setVisible(true);
    }
}
