package drylap.ui.followon;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.RouterLink;
import drylap.handoff.HandoffAct;
import drylap.handoff.HandoffResult;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.MarksSaid;
import java.util.List;

/** Says what became of what was just done, until something else is done. */
public final class Notice extends Div {
    private final transient Speech say;
    private final transient Runnable lookAgain;

    /** @param lookAgain shows how things stand now */
    public Notice(Speech say, Runnable lookAgain) {
        this.say = say;
        this.lookAgain = lookAgain;
        addClassName("notice");
        getElement().setAttribute("role", "status");
        setVisible(false);
    }

    public void say(HandoffResult result) {
        switch (result) {
            case HandoffResult.Done(var act) -> say(true, new Paragraph(done(act)), record(act));
            case HandoffResult.AlreadyDone(var act) ->
                say(true, new Paragraph(say.it("{0} already", done(act))), record(act));
            case HandoffResult.NotYet not ->
                say(false, new Paragraph(say.it("Nothing was changed. {0}", not.saying())));
            case HandoffResult.ChangedMeanwhile changed -> changed(say.it(changed.saying()));
        }
    }

    void say(MarksSaid said) {
        var list = new UnorderedList(said.refused().stream().map(ListItem::new).toArray(ListItem[]::new));
        if (said.refused().isEmpty()) say(true, new Paragraph(said.words()));
        else say(false, new Paragraph(said.words()), list);
    }

    private void changed(String words) {
        var again = new Button(say.it("Look again"), _ -> {
            setVisible(false);
            lookAgain.run();
        });
        say(false, new Paragraph(say.it("{0}. Nothing was overwritten.", words)), again);
    }

    private String done(HandoffAct act) {
        int openings = act.entries().size();
        String what = openings == 1 ? act.entries().getFirst().opening().value() : say.it("{0} openings", openings);
        return say.it("{0}: {1}", what, Saying.of(act.kind().words()));
    }

    private RouterLink record(HandoffAct act) {
        return new RouterLink(say.it("the record of it"), RecordView.class, act.id());
    }

    private void say(boolean good, Component... words) {
        removeAll();
        add(List.of(words));
        setClassName("good", good);
        setClassName("bad", !good);
        setVisible(true);
    }
}
