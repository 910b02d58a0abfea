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
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PaceLines;
import drylap.ui.shell.Desk;

/** How long installs are planned and how long they took lately; the scheduler says whether the plan follows. */
final class PacePanel {
    private final Paces paces;
    private final Person who;
    private final Desk desk;

    PacePanel(Paces paces, Person who, Desk desk) {
        this.paces = paces;
        this.who = who;
        this.desk = desk;
    }

    Section of(FolderShown shown) {
        Section panel = Panels.panel("pace", "Install minutes");
        FolderId folder = shown.stored().id();
        var lines = PaceLines.of(paces.of(who, folder));
        if (lines.methods().isEmpty()) {
            panel.add(hint(
                    "No install of the last 90 days has been ticked step by step, so the labour table is all there is. "
                            + lines.leftOut()));
            return panel;
        }
        panel.add(hint(
                "Learnt from the steps that crews tick, drawn to the labour table where little was seen; ± is a range of 95 %. "
                        + "Nothing changes until you accept it, and then from the next plan on."));
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
        var button = new Button("Plan %d minutes".formatted(minutes), _ -> say(paces.accept(who, folder, line.of())));
        button.setAriaLabel("Plan installs of method %s with %d minutes from now on"
                .formatted(line.of().method(), minutes));
        return button;
    }

    private Button decline(FolderId folder, PaceLines.OneMethod line) {
        var button = new Button("Leave as planned", _ -> say(paces.decline(who, folder, line.of())));
        button.setAriaLabel(
                "Leave installs of method %s as planned".formatted(line.of().method()));
        return button;
    }

    private Button withdraw(FolderId folder, PaceLines.OneMethod line, LabourAnswer inForce) {
        OfMethod of = line.of();
        var button =
                new Button("Back to the labour table", _ -> say(paces.withdraw(who, folder, inForce, of.seenId())));
        button.setAriaLabel("Take installs of method %s back to the labour table".formatted(of.method()));
        return button;
    }

    private void say(LabourResult result) {
        Notification.show(
                switch (result) {
                    case LabourResult.Answered(var answer) -> words(answer);
                    case LabourResult.AnsweredMeanwhile(var newer) ->
                        "%s answered meanwhile; look again.".formatted(newer.by());
                    case LabourResult.Refused(var why) -> why;
                });
        desk.refresh();
    }

    private static String words(LabourAnswer answer) {
        return switch (answer.kind()) {
            case ACCEPTED -> "The next plan takes these minutes for method %s.".formatted(answer.method());
            case DECLINED -> "Method %s stays as planned.".formatted(answer.method());
            case WITHDRAWN -> "Method %s is back at the labour table.".formatted(answer.method());
        };
    }

    private static NativeDetails byCrew(String where, PaceLines lines) {
        var table = Panels.table("Crew", "Method", "Size", "Minutes");
        lines.cells()
                .forEach(cell -> Panels.row(
                        table,
                        Panels.text(cell.crew()),
                        Panels.text(cell.method()),
                        Panels.text(cell.size()),
                        Panels.text(cell.minutes())));
        var inside = new Div(table, new SpreadsheetLink(where, "Install minutes by crew", table));
        inside.addClassName("scroll");
        if (!lines.leftOut().isEmpty()) inside.add(hint(lines.leftOut()));
        return new NativeDetails("By crew, method and size", inside);
    }

    private static Paragraph hint(String words) {
        var hint = new Paragraph(words.strip());
        hint.addClassName("hint");
        return hint;
    }
}
