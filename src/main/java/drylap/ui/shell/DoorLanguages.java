package drylap.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Nav;
import drylap.kernel.Language;
import drylap.speech.Speech;

/** Links, so that they work for whoever reads neither; each is called as whoever speaks it calls it. */
final class DoorLanguages extends Nav {
    DoorLanguages(Speech say) {
        addClassName("languages");
        getElement().setAttribute("aria-label", say.it("Language"));
        for (var language : Language.values()) {
            var link = new Anchor(
                    "%s?%s=%s".formatted(SignInView.ROUTE, DoorLanguage.PARAMETER, language.code()),
                    language.ownName());
            link.setRouterIgnore(true);
            link.getElement().setAttribute("lang", language.code());
            if (language == say.language()) link.getElement().setAttribute("aria-current", "true");
            add(link);
        }
    }
}
