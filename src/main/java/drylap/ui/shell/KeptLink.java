package drylap.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import drylap.kernel.PersonId;
import drylap.security.KeptOfPerson;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/** Takes along what is kept of a person, as JSON; whoever follows it is asked for their rights then. */
public final class KeptLink extends Anchor {
    public KeptLink(Speech say, KeptOfPerson kept, SignedIn signedIn, PersonId id) {
        setText(say.it("What is kept of this person (JSON)"));
        setHref(DownloadHandler.fromInputStream(_ -> {
            byte[] json = kept.json(signedIn.person(), id).getBytes(StandardCharsets.UTF_8);
            return new DownloadResponse(
                    new ByteArrayInputStream(json),
                    "drylap-person-%d.json".formatted(id.value()),
                    "application/json",
                    json.length);
        }));
        getElement().setAttribute("download", true);
    }
}
