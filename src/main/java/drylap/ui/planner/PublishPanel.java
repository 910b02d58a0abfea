package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.notification.Notification;
import drylap.kernel.SiteId;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.PublishResult;
import drylap.planning.Visit;
import drylap.ui.drawn.Differences;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.LedgerSheet;
import drylap.ui.drawn.PlanChoice;
import drylap.ui.drawn.Words;
import drylap.ui.shell.Desk;
import java.time.ZoneId;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Which plan people work by, what a proposal would change, and the button that makes it theirs. */
final class PublishPanel extends Div {
    private static final int LINES_SHOWN = 60;

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
            add(compared(shown, published, choice.proposal().get().plan()));
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

    private Details compared(FolderShown shown, Plan published, Plan proposal) {
        var differences = Differences.between(published, proposal, proposal.start());
        var body = new Div(ledgers(published.ledger(), proposal.ledger()), changes(shown, differences));
        body.addClassName("compared");
        var details = new Details(
                "Against the published plan: %d moved, %d added, %d dropped, %d as they were"
                        .formatted(
                                differences.count(Differences.Kind.MOVED),
                                differences.count(Differences.Kind.ADDED),
                                differences.count(Differences.Kind.DROPPED),
                                differences.same()),
                body);
        details.addClassName("differences");
        return details;
    }

    private static NativeTable ledgers(Ledger published, Ledger proposal) {
        NativeTable table = Panels.table("Cost", "Published", "Proposal");
        var before = LedgerSheet.of(published).rows();
        var after = LedgerSheet.of(proposal).rows();
        for (int i = 0; i < after.size(); i++)
            Panels.row(
                    table,
                    Panels.text(after.get(i).term()),
                    Panels.text(number(before.get(i).cost())),
                    Panels.text(number(after.get(i).cost())));
        Panels.row(
                table,
                Panels.text("Sum", "strong"),
                Panels.text(number(published.soft()), "strong"),
                Panels.text(number(proposal.soft()), "strong"));
        return table;
    }

    private static NativeTable changes(FolderShown shown, Differences differences) {
        NativeTable table = Panels.table("Opening", "Task", "Was", "Is to be");
        differences.lines().stream().limit(LINES_SHOWN).forEach(line -> {
            SiteId site = line.either().facade().site();
            ZoneId zone = shown.site(site).zone();
            Panels.row(
                    table,
                    WallsView.link(line.either().opening()),
                    new Span(
                            Panels.mark(line.either().task().code()),
                            Panels.text(line.either().task().code())),
                    Panels.text(visit(line.was(), zone)),
                    Panels.text(visit(line.is(), zone)));
        });
        return table;
    }

    private static String visit(@Nullable Visit visit, ZoneId zone) {
        return visit == null
                ? "not planned"
                : "%s, %s"
                        .formatted(
                                Words.moment(visit.start(), zone), visit.crew().value());
    }

    private static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value).replace(',', '\u2009');
    }
}
