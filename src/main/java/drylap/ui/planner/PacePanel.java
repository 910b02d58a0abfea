package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import drylap.kernel.FolderId;
import drylap.pace.PaceSheet.OfMethod;
import drylap.pace.Paces;
import drylap.planning.LabourAnswer;
import drylap.planning.LabourResult;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PaceLines;
import drylap.ui.shell.Desk;

/** How long installs are planned and how long they took lately; the scheduler says whether the plan follows. */
final class PacePanel {
    private final Paces paces;
    private final Person who;
    private final Desk desk;
    private final Speech say;

    PacePanel(Paces paces, Person who, Desk desk) {
        this.paces = paces;
        this.who = who;
        this.desk = desk;
        say = new Speech(who.reading());
    }

    Section of(FolderShown shown) {
        Section panel = Panels.panel("pace", say.it("Install minutes"));
        FolderId folder = shown.stored().id();
        var lines = PaceLines.of(say, paces.of(who, folder));
        if (lines.methods().isEmpty()) {
            panel.add(hint(say.it(
                            "No install of the last 90 days has been ticked step by step, so the labour table is all there is.")
                    + " "
                    + lines.leftOut()));
            return panel;
        }
        panel.add(hint(say.it(
                "Learnt from the steps that crews tick, drawn to the labour table where little was seen; ± is a range of 95 %. "
                        + "Nothing changes until you accept it, and then from the next plan on.")));
        var methods = new UnorderedList();
        methods.addClassName("days");
        boolean mayAnswer = mayAnswer();
        lines.methods().forEach(line -> methods.add(item(folder, line, mayAnswer)));
        panel.add(methods, byCrew(shown.name(), lines));
        return panel;
    }

    /** The labour table holds at every site. */
    private boolean mayAnswer() {
        return who.may(Operation.CHANGE_LABOUR) && who.reach().everySite();
    }

    private ListItem item(FolderId folder, PaceLines.OneMethod line, boolean mayAnswer) {
        var item = new ListItem(Panels.text(line.name(), "strong"), Panels.text(line.minutes()));
        if (!line.standing().isEmpty()) item.add(Panels.text(line.standing()));
        if (!mayAnswer) return item;
        var buttons = new Div();
        buttons.addClassName("away");
        if (line.of().suggested()) buttons.add(accept(folder, line), decline(folder, line));
        line.of().inForce().ifPresent(answer -> buttons.add(withdraw(folder, line, answer)));
        if (buttons.getChildren().findAny().isPresent()) item.add(buttons);
        return item;
    }

    private Button accept(FolderId folder, PaceLines.OneMethod line) {
        long minutes = Math.round(line.of().lately().minutes());
        var button = new Button(say.it("Plan {0} minutes", minutes), _ -> tell(paces.accept(who, folder, line.of())));
        button.setAriaLabel(say.it(
                "Plan installs of method {0} with {1} minutes from now on",
                line.of().method(), minutes));
        return button;
    }

    private Button decline(FolderId folder, PaceLines.OneMethod line) {
        var button = new Button(say.it("Leave as planned"), _ -> tell(paces.decline(who, folder, line.of())));
        button.setAriaLabel(
                say.it("Leave installs of method {0} as planned", line.of().method()));
        return button;
    }

    private Button withdraw(FolderId folder, PaceLines.OneMethod line, LabourAnswer inForce) {
        OfMethod of = line.of();
        var button = new Button(
                say.it("Back to the labour table"), _ -> tell(paces.withdraw(who, folder, inForce, of.seenId())));
        button.setAriaLabel(say.it("Take installs of method {0} back to the labour table", of.method()));
        return button;
    }

    private void tell(LabourResult result) {
        Notification.show(
                switch (result) {
                    case LabourResult.Answered(var answer) -> words(answer);
                    case LabourResult.AnsweredMeanwhile(var newer) ->
                        say.it("{0} answered meanwhile; look again.", newer.by());
                    case LabourResult.Refused(var why) -> say.it(why);
                });
        desk.refresh();
    }

    private String words(LabourAnswer answer) {
        return switch (answer.kind()) {
            case ACCEPTED -> say.it("The next plan takes these minutes for method {0}.", answer.method());
            case DECLINED -> say.it("Method {0} stays as planned.", answer.method());
            case WITHDRAWN -> say.it("Method {0} is back at the labour table.", answer.method());
        };
    }

    private NativeDetails byCrew(String where, PaceLines lines) {
        var table = Panels.table(say.it("Crew"), say.it("Method"), say.it("Size"), say.it("Minutes"));
        lines.cells()
                .forEach(cell -> Panels.row(
                        table,
                        Panels.text(cell.crew()),
                        Panels.text(cell.method()),
                        Panels.text(cell.size()),
                        Panels.text(cell.minutes())));
        var inside = new Div(table, new SpreadsheetLink(say, where, say.it("Install minutes by crew"), table));
        inside.addClassName("scroll");
        if (!lines.leftOut().isEmpty()) inside.add(hint(lines.leftOut()));
        return new NativeDetails(say.it("By crew, method and size"), inside);
    }

    private static Paragraph hint(String words) {
        var hint = new Paragraph(words.strip());
        hint.addClassName("hint");
        return hint;
    }
}
