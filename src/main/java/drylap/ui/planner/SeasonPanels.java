package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AttachmentType;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import drylap.intake.SeasonWriter;
import drylap.season.SiteOutlook;
import drylap.season.SiteOutlook.OneMore;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.components.SeasonChart;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.SeasonOfWall;
import drylap.ui.drawn.SeasonWords;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;

/** The outlook of one site as sections of a page. */
final class SeasonPanels {
    private final Speech say;

    SeasonPanels(Speech say) {
        this.say = say;
    }

    List<Component> of(SiteOutlook outlook, Site site) {
        List<Component> all = new ArrayList<>();
        all.add(whole(outlook, site));
        outlook.facades().forEach(facade -> all.add(wall(SeasonOfWall.of(say, outlook, facade, title(site, facade)))));
        all.add(crews(outlook));
        return all;
    }

    private static String title(Site site, SiteOutlook.FacadeOutlook facade) {
        return "%s, %s".formatted(site.name(), facade.facade().facade());
    }

    private Section whole(SiteOutlook outlook, Site site) {
        Section panel = Panels.panel("whole", site.name());
        var chance = new Paragraph(SeasonWords.inTime(say, outlook));
        chance.addClassName("strong");
        var climate = new Paragraph(SeasonWords.climate(say, outlook, site.zone()));
        if (outlook.assumed()) climate.addComponentAsFirst(Panels.text(say.it("assumed climate"), "climate-mark"));
        panel.add(chance, climate, new Paragraph(SeasonWords.crews(say, outlook)), files(outlook));
        return panel;
    }

    /** What is written is what is shown, for other programs. */
    private static Div files(SiteOutlook outlook) {
        var files = new Div();
        files.addClassName("ways");
        SeasonWriter.files(List.of(outlook)).forEach((name, bytes) -> {
            var link = new Anchor(
                    DownloadHandler.fromInputStream(
                            _ -> new DownloadResponse(new ByteArrayInputStream(bytes), name, "text/csv", bytes.length)),
                    AttachmentType.DOWNLOAD,
                    name);
            files.add(link);
        });
        return files;
    }

    private Section wall(SeasonOfWall wall) {
        Section panel = Panels.panel("wall-season", wall.chart().title());
        wall.said().forEach(words -> panel.add(new Paragraph(words)));
        var chart = new SeasonChart();
        chart.show(wall.chart());
        panel.add(chart, table(wall));
        return panel;
    }

    private NativeDetails table(SeasonOfWall wall) {
        NativeTable table = Panels.table(
                say.it("Month"),
                say.it("Days of work"),
                say.it("Light, h of one crew"),
                say.it("Usable, h of one crew"),
                say.it("In 8 of 10 years"),
                say.it("Install left, crew-h"),
                say.it("All left, crew-h"));
        wall.rows()
                .forEach(row -> Panels.row(
                        table,
                        Panels.text(row.month(), "strong"),
                        Panels.figure(row.days()),
                        Panels.figure(row.light()),
                        Panels.figure(row.usable()),
                        Panels.text(row.between()),
                        Panels.figure(row.installLeft()),
                        Panels.figure(row.left())));
        var scrolled =
                new Div(table, new SpreadsheetLink(say, wall.chart().title(), say.it("Season month by month"), table));
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement()
                .setAttribute("aria-label", say.it("Months of {0}", wall.chart().title()));
        return new NativeDetails(say.it("Month by month: {0}", wall.chart().title()), scrolled);
    }

    private Section crews(SiteOutlook outlook) {
        Section panel = Panels.panel("one-more", say.it("One more crew"));
        if (outlook.oneMore().isEmpty()) panel.add(new Paragraph(say.it("There is no work left for another crew.")));
        for (OneMore more : outlook.oneMore())
            panel.add(
                    new H3(SeasonWords.title(say, more)),
                    new UnorderedList(SeasonWords.oneMore(say, more).stream()
                            .map(ListItem::new)
                            .toArray(ListItem[]::new)));
        panel.add(new Paragraph(SeasonWords.pays(say)), new Paragraph(say.it(SeasonWords.LEFT_OUT)));
        return panel;
    }
}
