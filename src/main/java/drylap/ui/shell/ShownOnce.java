package drylap.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import drylap.speech.Speech;

/** Shows a secret once; afterwards nobody knows it but those whom it was given to. */
public final class ShownOnce extends Dialog {
    /**
     * @param before what whoever has it can do
     * @param use what it is for
     * @param after done once it is closed
     */
    public ShownOnce(Speech say, String title, String before, String secret, String use, Runnable after) {
        setHeaderTitle(title);
        addClassName("shown-once");
        var shown = new Span(secret);
        shown.addClassName("secret");
        add(new Paragraph(say.it("Shown now and never again. {0}", before)), shown, new Paragraph(use));
        // without a secure connection browsers give no clipboard: then it is marked, to be copied by hand
        var copy = new Button(
                say.it("Copy"),
                _ -> shown.getElement()
                        .executeJs(
                                "getSelection().selectAllChildren(this); navigator.clipboard?.writeText($0)", secret));
        var close = new Button(say.it("Done"), _ -> close());
        close.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(copy, close);
        addOpenedChangeListener(event -> {
            if (!event.isOpened()) after.run();
        });
    }
}
