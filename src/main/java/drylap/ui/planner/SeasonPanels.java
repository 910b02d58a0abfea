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
import drylap.ui.components.SeasonChart;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.SeasonOfWall;
import drylap.ui.drawn.SeasonWords;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;

/** The outlook of one site as sections of a page. */
final class SeasonPanels {
    private SeasonPanels() {}

    static List<Component> of(SiteOutlook outlook, Site site) {
        List<Component> all = new ArrayList<>();
        all.add(whole(outlook, site));
        outlook.facades().forEach(facade -> all.add(wall(SeasonOfWall.of(outlook, facade, title(site, facade)))));
        all.add(crews(outlook));
        return all;
    }

    private static String title(Site site, SiteOutlook.FacadeOutlook facade) {
        return "%s, %s".formatted(site.name(), facade.facade().facade());
    }

    private static Section whole(SiteOutlook outlook, Site site) {
        Section panel = Panels.panel("whole", site.name());
        var chance = new Paragraph(SeasonWords.inTime(outlook));
        chance.addClassName("strong");
        var climate = new Paragraph(SeasonWords.climate(outlook, site.zone()));
        if (outlook.assumed()) climate.addComponentAsFirst(Panels.text("assumed climate", "climate-mark"));
        panel.add(chance, climate, new Paragraph(SeasonWords.crews(outlook)), files(outlook));
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

    private static Section wall(SeasonOfWall wall) {
        Section panel = Panels.panel("wall-season", wall.chart().title());
        wall.said().forEach(words -> panel.add(new Paragraph(words)));
        var chart = new SeasonChart();
        chart.show(wall.chart());
        panel.add(chart, table(wall));
        return panel;
    }

    private static NativeDetails table(SeasonOfWall wall) {
        NativeTable table = Panels.table(
                "Month",
                "Days of work",
                "Light, h of one crew",
                "Usable, h of one crew",
                "In 8 of 10 years",
                "Install left, crew-h",
                "All left, crew-h");
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
        var scrolled = new Div(table, new SpreadsheetLink(wall.chart().title(), "Season month by month", table));
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement()
                .setAttribute("aria-label", "Months of " + wall.chart().title());
        return new NativeDetails("Month by month: " + wall.chart().title(), scrolled);
    }

    private static Section crews(SiteOutlook outlook) {
        Section panel = Panels.panel("one-more", "One more crew");
        if (outlook.oneMore().isEmpty()) panel.add(new Paragraph("There is no work left for another crew."));
        for (OneMore more : outlook.oneMore())
            panel.add(
                    new H3(SeasonWords.title(more)),
                    new UnorderedList(SeasonWords.oneMore(more).stream()
                            .map(ListItem::new)
                            .toArray(ListItem[]::new)));
        panel.add(new Paragraph(SeasonWords.PAYS), new Paragraph(SeasonWords.LEFT_OUT));
        return panel;
    }
}
