package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.FolderId;
import drylap.planning.WallDraft;
import drylap.sites.Compass;
import drylap.sites.Facade;
import drylap.sites.PlaceText;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.RuleSheet;
import drylap.ui.shell.TroubleLine;

/** A site that is there: its walls, and ways to put it right. */
final class OwnSitePanel extends Div {
    private final transient HandDesk hand;
    private final transient Speech say;
    private final transient FolderId folder;
    private final transient Site site;
    private final transient Runnable after;
    private final TroubleLine trouble = new TroubleLine();

    OwnSitePanel(HandDesk hand, Speech say, FolderShown shown, Site site, Runnable after) {
        this.hand = hand;
        this.say = say;
        this.folder = shown.stored().id();
        this.site = site;
        this.after = after;
        Section panel = Panels.panel("own-site", OwnSitesView.title(site));
        if (site.address().known()) panel.add(new Paragraph(site.address().inOneLine()));
        panel.add(new Paragraph("%s, %s".formatted(PlaceText.of(site.place()), site.zone())), trouble);
        var walls = new UnorderedList();
        walls.addClassName("own-walls");
        shown.folder().facades().stream()
                .filter(wall -> wall.id().site().equals(site.id()))
                .forEach(wall -> walls.add(wall(shown, wall)));
        panel.add(
                walls,
                new Details(say.it("One more wall"), moreWalls()),
                new Details(say.it("Put the site right"), correction()));
        add(panel);
    }

    private ListItem wall(FolderShown shown, Facade wall) {
        long openings = shown.folder().openings().stream()
                .filter(one -> one.facade().equals(wall.id()))
                .count();
        var faces = new TextField(say.it("Faces"));
        faces.setValue(RuleSheet.plain(wall.azimuthDeg()));
        faces.setAriaLabel(say.it("Wall {0} of {1} faces", wall.id().facade(), site.name()));
        faces.setSuffixComponent(Panels.text("°"));
        var turn = new Button(say.it("Turn"), _ -> turn(wall, faces));
        turn.setAriaLabel(say.it("Turn wall {0} of {1}", wall.id().facade(), site.name()));
        var remove = new Button(say.it("Remove"), _ -> send(() -> hand.remove(folder, wall.id())));
        remove.setAriaLabel(say.it("Remove wall {0} of {1}", wall.id().facade(), site.name()));
        remove.setVisible(openings == 0);
        return new ListItem(
                Panels.text(wall.id().facade(), "strong"),
                Panels.text(say.it("{0, plural, one {# opening} other {# openings}}", openings)),
                faces,
                turn,
                remove);
    }

    private void turn(Facade wall, TextField faces) {
        send(() -> hand.turn(folder, wall.id(), azimuth(faces)));
    }

    private Div moreWalls() {
        var name = new TextField(say.it("Name of the wall"));
        name.setHelperText(say.it("as the schedule calls it, such as North or Courtyard"));
        var faces = new TextField(say.it("Faces"));
        faces.setHelperText(say.it(Compass.ACCEPTED));
        var add = new Button(
                say.it("Add the wall"),
                _ -> send(() -> hand.addWall(folder, site.id(), new WallDraft(name.getValue(), azimuth(faces)))));
        return asked(name, faces, add);
    }

    private Div correction() {
        var place = new PlaceFields(say);
        place.show(site);
        var save =
                new Button(say.it("Save the changes"), _ -> send(() -> hand.change(folder, site.id(), place.read())));
        save.setAriaLabel(say.it("Save the changes of {0}", site.name()));
        var remove = new Button(say.it("Remove the site"), _ -> send(() -> hand.remove(folder, site.id())));
        remove.setAriaLabel(say.it("Remove site {0}", site.name()));
        return new Div(place, save, remove);
    }

    private static Div asked(com.vaadin.flow.component.Component... fields) {
        var asked = new Div(fields);
        asked.addClassName("asked");
        return asked;
    }

    private void send(HandForm.Sender sender) {
        HandForm.send(say, trouble, after, sender);
    }

    private static double azimuth(TextField field) throws WrongField {
        return Compass.azimuth(field.getValue())
                .orElseThrow(() -> new WrongField(
                        field.getLabel(),
                        field.isEmpty()
                                ? Saying.of("is blank")
                                : Saying.of("''{0}'' is no direction", field.getValue()),
                        Saying.of("accepted: {0}", Saying.of(Compass.ACCEPTED))));
    }
}
