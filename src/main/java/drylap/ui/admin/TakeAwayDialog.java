package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import drylap.kernel.ChangedMeanwhile;
import drylap.security.KeptOfPerson;
import drylap.security.Listed;
import drylap.security.PeopleTakenAway;
import drylap.security.SignedIn;
import drylap.security.TakingAway;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.ui.shell.KeptLink;
import drylap.ui.shell.TroubleLine;
import java.util.Map;
import java.util.TreeMap;

/** Shows what taking someone away would change, then does it at a second wish. */
final class TakeAwayDialog extends Dialog {
    private static final Saying OTHERS = Saying.of("other rows");
    private static final Map<String, Saying> WORDS = Map.of(
            "step_mark", Saying.of("marks"),
            "photo", Saying.of("photos"),
            "handoff_act", Saying.of("acts of handing over"),
            "rough_measurement", Saying.of("measurements of rough openings"),
            "change_log", Saying.of("lines of the history"));

    private final transient PeopleTakenAway away;
    private final transient SignedIn signedIn;
    private final transient Listed listed;
    private final transient Runnable after;
    private final transient Speech say;
    private final TroubleLine trouble = new TroubleLine();

    TakeAwayDialog(PeopleTakenAway away, KeptOfPerson kept, SignedIn signedIn, Listed listed, Runnable after) {
        this.away = away;
        this.signedIn = signedIn;
        this.listed = listed;
        this.after = after;
        var who = signedIn.person();
        say = new Speech(who.reading());
        setMaxWidth("36rem");
        setHeaderTitle(say.it("Take {0} away", listed.person().name()));
        add(trouble);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()));
        try {
            show(away.preview(who, listed.person().id()));
            add(new KeptLink(say, kept, signedIn, listed.person().id()));
        } catch (IllegalArgumentException refused) {
            trouble.say(say.it(Unfit.saying(refused)));
        }
    }

    private void show(TakingAway what) {
        add(
                new Paragraph(say.it(
                        "“{0}” will stand in place of the name in all that Drylap keeps. What the person did stays, with its time and place, and the history can still be checked. Nobody can take this back.",
                        what.placeholder())),
                new Paragraph(
                        say.it(
                                "Sessions, tokens and hooks of the person end, and so do the calendar links that the person made: make new ones for the crews.")),
                changed(what),
                new Paragraph(
                        say.it(
                                "Backups keep the name until they are thrown away; so do papers, spreadsheets and calendars that were taken along, and what a photo itself shows. Only the whole name is found: a first name alone, or a nickname, stays in a note.")));
        limits(what);
        var act = new Button(say.it("Take away for good"), _ -> takeAway());
        act.addThemeVariants(ButtonVariant.LUMO_PRIMARY, ButtonVariant.LUMO_ERROR);
        getFooter().add(act);
    }

    private UnorderedList changed(TakingAway what) {
        Map<String, Long> counted = new TreeMap<>();
        what.changed()
                .forEach(rows ->
                        counted.merge(say.it(WORDS.getOrDefault(rows.table(), OTHERS)), rows.rows(), Long::sum));
        var list = new UnorderedList();
        counted.forEach((words, rows) -> list.add(new ListItem("%s: %d".formatted(words, rows))));
        return list;
    }

    private void limits(TakingAway what) {
        if (!what.formerNames().isEmpty())
            add(new Paragraph(
                    say.it("Names that the person had before go too: {0}.", String.join(", ", what.formerNames()))));
        if (what.namesakes() > 0)
            add(
                    new Paragraph(
                            say.it(
                                    "Somebody else has the same name: it stays in what they did, and goes from texts that do not say which of them is meant.")));
        long stays = what.stays().stream().mapToLong(TakingAway.Rows::rows).sum();
        if (stays > 0)
            add(new Paragraph(say.it(
                    "The same words stay in {0} rows that are keys or were brought in, such as names of sites and crews.",
                    stays)));
    }

    private void takeAway() {
        try {
            var taken = away.takeAway(signedIn.person(), listed.person().id(), listed.version());
            close();
            Notification.show(say.it("Taken away: “{0}” stands in place of the name.", taken.placeholder()));
            after.run();
        } catch (IllegalArgumentException refused) {
            trouble.say(say.it(Unfit.saying(refused)));
        } catch (ChangedMeanwhile changed) {
            trouble.say(say.it("The person was changed meanwhile; nothing was taken away. Close this and look again."));
        }
    }
}
