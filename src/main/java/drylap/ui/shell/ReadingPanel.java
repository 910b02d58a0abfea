package drylap.ui.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.select.Select;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.speech.Speech;
import java.util.function.Consumer;

/** Where someone says in which language and by which ruler they read; it holds at once, on every device. */
final class ReadingPanel extends Div {
    private final Select<Language> language = new Select<>();
    private final Select<Ruler> ruler = new Select<>();

    ReadingPanel(Speech say, Consumer<Reading> chosen) {
        addClassNames("panel", "reading");
        language.setItems(Language.values());
        language.setItemLabelGenerator(Language::ownName);
        // in both, for whoever came to a page that they cannot read
        language.setLabel(say.it("Language") + (say.language() == Language.ENGLISH ? " · Idioma" : " · Language"));
        language.setValue(say.language());
        ruler.setItems(Ruler.values());
        ruler.setLabel(say.it("Lengths"));
        ruler.setItemLabelGenerator(one -> words(say, one));
        ruler.setValue(say.reading().ruler());
        language.addValueChangeListener(event -> {
            if (event.isFromClient()) chosen.accept(say.reading().in(event.getValue()));
        });
        ruler.addValueChangeListener(event -> {
            if (event.isFromClient()) chosen.accept(say.reading().by(event.getValue()));
        });
        add(new H2(say.it("How you read")), language, ruler);
    }

    private static String words(Speech say, Ruler ruler) {
        return switch (ruler) {
            case INCHES -> say.it("inches with fractions");
            case MILLIMETRES -> say.it("millimetres");
        };
    }
}
