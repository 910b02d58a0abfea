package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import drylap.risk.RiskReport;
import drylap.speech.Speech;
import drylap.ui.components.CrewDayOdds;
import drylap.ui.components.HandoverOdds;
import drylap.ui.components.WetOdds;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.HandoverChart;
import drylap.ui.drawn.OddsCharts;
import drylap.ui.drawn.OddsSheet;
import drylap.ui.drawn.OddsTable;
import drylap.ui.drawn.OddsTables;
import java.util.List;

/** The odds as charts, each with its table. */
final class OddsFigures {
    private final Speech say;
    private final OddsDesk desk;
    private final OddsPanels panels;
    private final OddsCharts charts;
    private final OddsTables tables;

    OddsFigures(Speech say, OddsPanels panels, OddsDesk desk, FolderShown shown, RiskReport report) {
        this.say = say;
        this.panels = panels;
        this.desk = desk;
        charts = OddsCharts.of(say, shown, report);
        tables = new OddsTables(say, shown, report);
    }

    List<Component> panels(OddsSheet sheet) {
        return List.of(handovers(sheet), panels.drivers(sheet), crewDays(), openings());
    }

    private Section handovers(OddsSheet sheet) {
        Section panel = Panels.panel("odds-handovers", say.it("Hand-over of facades"));
        var walls = new Div();
        walls.addClassName("walls");
        for (int i = 0; i < sheet.walls().size(); i++) {
            Div wall = OddsPanels.wall(sheet.walls().get(i));
            wall.add(chart(charts.handovers().get(i)));
            walls.add(wall);
        }
        panel.add(walls, table(tables.handovers()), table(tables.byDay()));
        return panel;
    }

    private OddsTablePanel table(OddsTable table) {
        return new OddsTablePanel(say, desk, table);
    }

    private static HandoverOdds chart(HandoverChart odds) {
        var chart = new HandoverOdds();
        chart.show(odds);
        return chart;
    }

    private Section crewDays() {
        Section panel = Panels.panel("odds-crew-days", say.it("Crew-days at risk"));
        var chart = new CrewDayOdds();
        chart.show(charts.crewDays());
        panel.add(chart, table(tables.crewDays()));
        return panel;
    }

    private Section openings() {
        Section panel = Panels.panel("odds-openings", say.it("Openings that may get wet"));
        var chart = new WetOdds();
        chart.show(charts.wet());
        chart.onOpeningChosen(opening -> WallsView.open(UI.getCurrent(), opening));
        panel.add(chart, table(tables.openings()));
        return panel;
    }
}
