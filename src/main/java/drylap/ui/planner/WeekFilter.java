package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.QueryParameters;
import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.WeekChoice;
import drylap.ui.drawn.Words;
import java.util.List;

/** Narrows the week sheet to a site, a trade or a crew; the choice stands in the address too. */
@CssImport("./visits.css")
final class WeekFilter extends Div {
    private final transient VisitDesk desk;
    private final transient Speech say;
    private final Select<SiteId> site;
    private final Select<Trade> trade;
    private final Select<CrewId> crew;
    private final transient Offered<SiteId> sites;
    private final transient Offered<Trade> trades;
    private final transient Offered<CrewId> crews;
    private final Button reset;
    private final Span count = new Span();

    WeekFilter(Speech say, VisitDesk desk, Runnable changed) {
        this.desk = desk;
        this.say = say;
        site = select(say.it("Site"), say.it("every site"));
        trade = select(say.it("Trade"), say.it("every trade"));
        crew = select(say.it("Crew"), say.it("every crew"));
        sites = new Offered<>(site);
        trades = new Offered<>(trade);
        crews = new Offered<>(crew);
        reset = new Button(say.it("Show everything"));
        addClassName("week-filter");
        count.getElement().setAttribute("role", "status");
        for (Select<?> one : List.of(site, trade, crew))
            one.addValueChangeListener(event -> {
                if (event.isFromClient()) choose(read(), changed);
            });
        reset.addClickListener(_ -> choose(WeekChoice.ALL, changed));
        add(site, trade, crew, reset, count);
    }

    private static <T> Select<T> select(String label, String all) {
        var select = new Select<T>();
        select.setLabel(label);
        select.setEmptySelectionAllowed(true);
        select.setEmptySelectionCaption(all);
        return select;
    }

    void show(FolderShown shown) {
        WeekChoice choice = desk.choice().within(shown);
        desk.choose(choice);
        sites.show(
                shown.folder().sites().stream().map(Site::id).toList(),
                id -> shown.site(id).name());
        trades.show(
                shown.folder().crews().stream().map(Crew::trade).distinct().toList(), one -> say.it(Words.crewOf(one)));
        crews.show(shown.folder().crews().stream().map(Crew::id).toList(), CrewId::value);
        site.setValue(choice.site());
        trade.setValue(choice.trade());
        crew.setValue(choice.crew());
        reset.setEnabled(!choice.all());
        count.setText(choice.words(say, shown));
    }

    private WeekChoice read() {
        return new WeekChoice(site.getValue(), trade.getValue(), crew.getValue());
    }

    private void choose(WeekChoice choice, Runnable changed) {
        desk.choose(choice);
        UI.getCurrent()
                .getPage()
                .getHistory()
                .replaceState(null, new Location(WeekSheetView.PATH, QueryParameters.simple(choice.parameters())));
        changed.run();
    }
}
