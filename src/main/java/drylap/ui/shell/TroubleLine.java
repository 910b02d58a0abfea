package drylap.ui.shell;

import com.vaadin.flow.component.html.Paragraph;

/** What is wrong with what somebody asked for, read out at once; hidden as long as nothing is. */
public final class TroubleLine extends Paragraph {
    public TroubleLine() {
        addClassName("trouble");
        getElement().setAttribute("role", "alert");
        setVisible(false);
    }

    public void say(String words) {
        setText(words);
        setVisible(true);
    }

    public void clear() {
        setVisible(false);
    }
}
