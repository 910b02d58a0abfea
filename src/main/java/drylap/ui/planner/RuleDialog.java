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
    private final TextField value = new TextField("Value");
    private final TextField reason = new TextField("Reason");
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
        setHeaderTitle(line.name());
        value.setHelperText("%s; %s".formatted(line.bounds(), line.standard()));
        value.setSuffixComponent(Panels.text(line.rule().unit()));
        var fields = new Div(
                Panels.text(line.effect()), Panels.text("Now " + line.value() + ", " + line.from()), value, reason);
        fields.addClassName("fields");
        add(fields, trouble);
        var back = new Button("Back to the default", _ -> change(null));
        back.setVisible(line.ownHere());
        var save = new Button("Save", _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(back, new Button("Cancel", _ -> close()), save);
    }

    private void save() {
        try {
            change(Double.valueOf(value.getValue().strip()));
        } catch (NumberFormatException notANumber) {
            say("'%s' is no number; put in %s, with a point where it is not whole"
                    .formatted(value.getValue(), line.bounds()));
        }
    }

    private void change(@Nullable Double to) {
        switch (rules.change(who, folder, new RuleRequest(site, line.rule(), to, reason.getValue(), seenId))) {
            case RuleChangeResult.Changed _ -> done();
            case RuleChangeResult.Refused(var why) -> say(why);
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
        String did = newer.value() == null ? "set it back" : "set it to " + RuleSheet.plain(newer.value());
        say("%s %s meanwhile: %s. Nothing of yours was saved. Save again to put yours in its place, or cancel."
                .formatted(newer.by(), did, newer.reason()));
    }

    private void say(String words) {
        trouble.say(words);
    }
}
