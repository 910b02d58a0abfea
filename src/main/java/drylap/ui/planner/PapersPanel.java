package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.spring.annotation.SpringComponent;
import drylap.kernel.CrewId;
import drylap.planning.Plan;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.PaperLinks;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Scope;

/** The days of crews on paper, by the published plan; nothing at all where crews do not work by the folder that is shown. */
@SpringComponent
@Scope("prototype")
final class PapersPanel extends Div {
    private final transient Publications publications;
    private final transient Speech say;
    private final Select<CrewId> crew = new Select<>();
    private final Select<LocalDate> day = new Select<>();
    private final Div links = new Div();
    private List<Visit> visits = List.of();

    PapersPanel(Publications publications, SignedIn signedIn) {
        this.publications = publications;
        say = new Speech(signedIn.reading());
        addClassNames("panel", "day-papers");
        crew.setLabel(say.it("Day sheet of crew"));
        day.setLabel(say.it("Day"));
        day.setItemLabelGenerator(say::day);
        crew.addValueChangeListener(_ -> offerDays());
        day.addValueChangeListener(_ -> link());
        add(crew, day, links);
        setVisible(false);
    }

    void show(FolderShown shown) {
        var folder = shown.stored().id();
        var published = Optional.ofNullable(shown.choice().published())
                .filter(_ -> publications.inWork().filter(folder::equals).isPresent())
                .map(Plan::visits)
                .orElse(List.of());
        if (published.equals(visits)) return;
        visits = published;
        setVisible(!visits.isEmpty());
        var crews = visits.stream().map(Visit::crew).distinct().sorted().toList();
        var before = crew.getValue();
        crew.setItems(crews);
        if (!crews.isEmpty()) crew.setValue(before != null && crews.contains(before) ? before : crews.getFirst());
    }

    private void offerDays() {
        var before = day.getValue();
        var days = visits.stream()
                .filter(visit -> visit.crew().equals(crew.getValue()))
                .map(Visit::date)
                .distinct()
                .sorted()
                .toList();
        day.setItems(days);
        if (!days.isEmpty()) day.setValue(before != null && days.contains(before) ? before : days.getFirst());
    }

    private void link() {
        links.removeAll();
        if (crew.getValue() != null && day.getValue() != null)
            links.add(PaperLinks.day(say, crew.getValue(), day.getValue()));
    }
}
