package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import drylap.planning.Plan;
import drylap.planning.PublishResult;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChanges;
import drylap.ui.drawn.PlanChoice;
import drylap.ui.drawn.Words;
import drylap.ui.shell.Desk;
import java.time.ZoneId;

/** Which plan people work by, what a proposal would change, and the button that makes it theirs. */
final class PublishPanel extends Div {
    private final Desk desk;

    PublishPanel(Desk desk) {
        this.desk = desk;
        addClassName("publish");
        getElement().setAttribute("aria-live", "polite");
    }

    void show(FolderShown shown) {
        removeAll();
        PlanChoice choice = shown.choice();
        var state = new Paragraph(words(shown, choice));
        state.addClassName("strong");
        add(state);
        if (choice.proposal().isEmpty()) return;
        add(ways(choice));
        Plan published = choice.published();
        if (published != null)
            add(new ChangesPanel(
                    shown.name(),
                    PlanChanges.of(shown, published, choice.proposal().get().plan())));
    }

    private static String words(FolderShown shown, PlanChoice choice) {
        ZoneId zone = shown.folder().sites().getFirst().zone();
        var publication = choice.publication();
        String published = publication == null
                ? "No plan of this folder is published: crews see nothing of it."
                : "Published %s by %s.".formatted(Words.moment(publication.at(), zone), publication.by());
        return choice.proposal()
                .map(proposal -> "%s Below: %s."
                        .formatted(
                                published,
                                choice.lookAtPublished() && publication != null
                                        ? "the published plan"
                                        : "a proposal of " + Words.moment(proposal.madeAt(), zone)))
                .orElse(published);
    }

    private Div ways(PlanChoice choice) {
        var publish = new Button("Publish this proposal", _ -> publish(choice));
        publish.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        publish.setVisible(!choice.lookAtPublished());
        var look = new Button(
                choice.lookAtPublished() ? "Look at the proposal" : "Look at the published plan",
                _ -> desk.lookAtPublished(!choice.lookAtPublished()));
        look.setVisible(choice.published() != null);
        var ways = new Div(publish, look);
        ways.addClassName("ways");
        return ways;
    }

    private void publish(PlanChoice choice) {
        switch (desk.publish(choice)) {
            case PublishResult.Published _ -> Notification.show("Published: crews and follow-on trades see it now.");
            case PublishResult.PublishedMeanwhile(var newer) ->
                Notification.show(
                        "%s published another plan meanwhile. Look at what this one would change now, then decide."
                                .formatted(newer.by()));
        }
        desk.refresh();
    }
}
