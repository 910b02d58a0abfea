package drylap.ui.shell;

import drylap.kernel.Language;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Collections;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The language of whoever is not signed in: chosen at the door, else the first of their browser's that is one of ours. */
final class DoorLanguage {
    /** In the address of the sign-in page. */
    static final String PARAMETER = "language";

    private static final String CHOSEN = "drylap.language";

    private DoorLanguage() {}

    static Language of(@Nullable HttpServletRequest request) {
        if (request == null) return Language.ENGLISH;
        return chosen(request).orElseGet(() -> ofBrowser(request));
    }

    /** For as long as the session lasts. */
    static Optional<Language> chosen(HttpServletRequest request) {
        var session = request.getSession(false);
        return session != null && session.getAttribute(CHOSEN) instanceof Language language
                ? Optional.of(language)
                : Optional.empty();
    }

    static void choose(HttpServletRequest request, Language language) {
        request.getSession().setAttribute(CHOSEN, language);
    }

    private static Language ofBrowser(HttpServletRequest request) {
        return Collections.list(request.getLocales()).stream()
                .flatMap(wanted -> Language.of(wanted).stream())
                .findFirst()
                .orElse(Language.ENGLISH);
    }
}
