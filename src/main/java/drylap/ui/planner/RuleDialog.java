package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.planning.RuleChange;
import drylap.planning.RuleChangeResult;
import drylap.planning.RuleRequest;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.RuleSheet;
import drylap.ui.shell.TroubleLine;
import org.jspecify.annotations.Nullable;

/** Changes one rule at one place, or lets it go back. */
final class RuleDialog extends Dialog {
    private final transient ChangedRules rules;
    private final transient Person who;
    private final transient FolderId folder;
    private final transient @Nullable SiteId site;
    private final transient RuleSheet.Line line;
    private final transient Runnable after;
    private final transient Speech say;
    private final TextField value = new TextField();
    private final TextField reason = new TextField();
    private final TroubleLine trouble = new TroubleLine();
    private long seenId;

    RuleDialog(
            ChangedRules rules,
            Person who,
            FolderId folder,
            @Nullable SiteId site,
            RuleSheet.Line line,
            Runnable after) {
        this.rules = rules;
        this.who = who;
        this.folder = folder;
        this.site = site;
        this.line = line;
        this.after = after;
        seenId = line.seenId();
        say = new Speech(who.reading());
        draw();
    }

    private void draw() {
        value.setLabel(say.it("Value"));
        reason.setLabel(say.it("Reason"));
        setHeaderTitle(line.name());
        value.setHelperText("%s; %s".formatted(line.bounds(), line.standard()));
        value.setSuffixComponent(Panels.text(say.it(line.rule().unit())));
        var fields = new Div(
                Panels.text(line.effect()),
                Panels.text(say.it("Now {0}, {1}", line.value(), line.from())),
                value,
                reason);
        fields.addClassName("fields");
        add(fields, trouble);
        var back = new Button(say.it("Back to the default"), _ -> change(null));
        back.setVisible(line.ownHere());
        var save = new Button(say.it("Save"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(back, new Button(say.it("Cancel"), _ -> close()), save);
    }

    private void save() {
        try {
            change(Double.valueOf(value.getValue().strip()));
        } catch (NumberFormatException notANumber) {
            trouble.say(say.it(
                    "“{0}” is no number; put in {1}, with a point where it is not whole",
                    value.getValue(), line.bounds()));
        }
    }

    private void change(@Nullable Double to) {
        switch (rules.change(who, folder, new RuleRequest(site, line.rule(), to, reason.getValue(), seenId))) {
            case RuleChangeResult.Changed _ -> done();
            case RuleChangeResult.Refused(var why) -> trouble.say(say.it(why));
            case RuleChangeResult.ChangedMeanwhile(var newer) -> meanwhile(newer);
        }
    }

    private void done() {
        close();
        after.run();
    }

    /** The person has now seen the newer value, and decides. */
    private void meanwhile(RuleChange newer) {
        seenId = newer.id();
        trouble.say(
                newer.value() == null
                        ? say.it(
                                "{0} set it back meanwhile: {1}. Nothing of yours was saved. Save again to put yours in its place, or cancel.",
                                newer.by(), newer.reason())
                        : say.it(
                                "{0} set it to {1} meanwhile: {2}. Nothing of yours was saved. Save again to put yours in its place, or cancel.",
                                newer.by(), RuleSheet.plain(newer.value()), newer.reason()));
    }
}
