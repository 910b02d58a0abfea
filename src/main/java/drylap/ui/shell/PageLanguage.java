package drylap.ui.shell;

import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.VaadinServletRequest;
import drylap.kernel.Coded;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.security.Person;
import drylap.security.SignedIn;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Says in the page itself in which language it is: those who hear it, and the page's own scripts, go by that. */
@Component
class PageLanguage implements VaadinServiceInitListener {
    private final transient SignedIn signedIn;

    PageLanguage(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @Override
    public void serviceInit(ServiceInitEvent service) {
        service.addIndexHtmlRequestListener(page -> {
            heed(http(page.getVaadinRequest()));
            page.getDocument()
                    .getElementsByTag("html")
                    .attr("lang", language(page.getVaadinRequest()).code());
        });
        service.getSource()
                .addUIInitListener(begun -> begun.getUI()
                        .setLocale(language(VaadinRequest.getCurrent()).locale()));
    }

    private Language language(@Nullable VaadinRequest request) {
        return signedIn.find()
                .map(Person::reading)
                .map(Reading::language)
                .orElseGet(() -> DoorLanguage.of(http(request)));
    }

    /** Chosen at the door by a link to the same page. */
    private static void heed(@Nullable HttpServletRequest request) {
        if (request == null) return;
        String wanted = request.getParameter(DoorLanguage.PARAMETER);
        if (wanted != null && request.getRequestURI().endsWith("/" + SignInView.ROUTE))
            Coded.parse(Language.class, wanted).ifPresent(language -> DoorLanguage.choose(request, language));
    }

    private static @Nullable HttpServletRequest http(@Nullable VaadinRequest request) {
        return request instanceof VaadinServletRequest servlet ? servlet.getHttpServletRequest() : null;
    }
}
