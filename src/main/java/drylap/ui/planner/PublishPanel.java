package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import drylap.planning.PublishResult;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChanges;
import drylap.ui.drawn.PlanChoice;
import drylap.ui.shell.Desk;
import drylap.ui.shell.Unchanged;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Which plan people work by, what a proposal would change, and the button that makes it theirs. */
final class PublishPanel extends Div {
    private final transient Speech say;
    private final Desk desk;
    private final transient Unchanged drawn = new Unchanged();

    PublishPanel(Speech say, Desk desk) {
        this.say = say;
        this.desk = desk;
        addClassName("publish");
        getElement().setAttribute("aria-live", "polite");
    }

    void show(FolderShown shown) {
        PlanChoice choice = shown.choice();
        var changes = changes(shown, choice);
        if (drawn.since(List.of(shown.stored(), choice, changes))) return;
        removeAll();
        var state = new Paragraph(words(shown, choice));
        state.addClassName("strong");
        add(state);
        if (choice.proposal().isEmpty()) return;
        add(ways(choice));
        changes.ifPresent(one -> add(new ChangesPanel(say, shown.name(), one)));
    }

    private Optional<PlanChanges> changes(FolderShown shown, PlanChoice choice) {
        return Optional.ofNullable(choice.published())
                .flatMap(published ->
                        choice.proposal().map(proposal -> PlanChanges.of(say, shown, published, proposal.plan())));
    }

    private String words(FolderShown shown, PlanChoice choice) {
        ZoneId zone = shown.folder().sites().getFirst().zone();
        var publication = choice.publication();
        String published = publication == null
                ? say.it("No plan of this folder is published: crews see nothing of it.")
                : say.it("Published {0} by {1}.", say.moment(publication.at(), zone), publication.publisher());
        return choice.proposal()
                .map(proposal -> "%s %s"
                        .formatted(
                                published,
                                choice.lookAtPublished() && publication != null
                                        ? say.it("Below: the published plan.")
                                        : say.it("Below: a proposal of {0}.", say.moment(proposal.madeAt(), zone))))
                .orElse(published);
    }

    private Div ways(PlanChoice choice) {
        var publish = new Button(say.it("Publish this proposal"), _ -> publish(choice));
        publish.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        publish.setVisible(!choice.lookAtPublished());
        var look = new Button(
                say.it(choice.lookAtPublished() ? "Look at the proposal" : "Look at the published plan"),
                _ -> desk.lookAtPublished(!choice.lookAtPublished()));
        look.setVisible(choice.published() != null);
        var ways = new Div(publish, look);
        ways.addClassName("ways");
        return ways;
    }

    private void publish(PlanChoice choice) {
        switch (desk.publish(choice)) {
            case PublishResult.Published _ ->
                Notification.show(say.it("Published: crews and follow-on trades see it now."));
            case PublishResult.PublishedMeanwhile(var newer) ->
                Notification.show(say.it(
                        "{0} published another plan meanwhile. Look at what this one would change now, then decide.",
                        newer.publisher()));
        }
        desk.refresh();
    }
}
