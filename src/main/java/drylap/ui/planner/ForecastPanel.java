package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.kernel.SiteId;
import drylap.security.Person;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.SiteForecast;

/** What a site is planned by, how the last fetch ended, and the ways to choose a source and to fetch now. */
final class ForecastPanel extends Div {
    private final Paragraph said = new Paragraph();

    ForecastPanel(
            ForecastDesk desk, Person who, FolderShown shown, SiteId site, SiteForecast forecast, Runnable after) {
        String name = shown.site(site).name();
        addClassName("site-forecast");
        add(new Paragraph(forecast.planned()));
        if (!forecast.fetched().isEmpty()) add(new Paragraph(forecast.fetched()));
        if (!forecast.remarks().isEmpty()) add(remarks(forecast));
        add(new LastingPanel(desk.lasting(), who, shown, site, forecast.lasting(), after));
        var changed = ForecastChangeView.link(site, "What changed since the forecast before");
        changed.getElement().setAttribute("aria-label", "%s: %s".formatted(changed.getText(), name));
        add(changed);
        if (!desk.mayChoose(who, site)) return;
        var choose = new Button(
                "Choose the source", _ -> new ForecastDialog(desk, who, desk.choice(who, site), name, after).open());
        choose.setAriaLabel("Choose the source of the forecast of " + name);
        add(choose);
        var bringIn = new Button(
                "Bring in a file",
                _ -> new ForecastFileDialog(
                                desk,
                                who,
                                shown.site(site),
                                shown.folder().rules().at(site),
                                after)
                        .open());
        bringIn.setAriaLabel("Bring in a file of the forecast of " + name);
        if (forecast.source() != null && forecast.source().fetched()) add(fetch(desk, who, site, name, forecast));
        add(bringIn);
        said.getElement().setAttribute("role", "status");
        said.setVisible(false);
        add(said);
    }

    private static UnorderedList remarks(SiteForecast forecast) {
        var list = new UnorderedList();
        list.getElement().setAttribute("aria-label", "Remarks on the forecast");
        forecast.remarks().forEach(remark -> list.add(new ListItem(remark)));
        return list;
    }

    private Button fetch(ForecastDesk desk, Person who, SiteId site, String name, SiteForecast forecast) {
        var fetch = new Button(
                "Fetch now",
                _ -> say(
                        desk.fetch(who, site)
                                ? "Being fetched; what comes of it shows here."
                                : "The source asked not to be asked yet."));
        fetch.setAriaLabel("Fetch now the forecast of %s".formatted(name));
        fetch.setEnabled(!forecast.waits());
        fetch.setDisableOnClick(true);
        return fetch;
    }

    private void say(String words) {
        said.setText(words);
        said.setVisible(true);
    }
}
