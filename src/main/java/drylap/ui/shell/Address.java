package drylap.ui.shell;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** Under which address people reach Drylap: the one that is set, else the one by which a request came. */
@Component
public class Address {
    private final String set;

    Address(@Value("${drylap.address:}") String set) {
        this.set = set.strip().replaceFirst("/+$", "");
        if (!this.set.isEmpty() && !this.set.matches("https?://[^/?#\\s]+(/[^?#\\s]*)?"))
            throw new IllegalArgumentException(
                    "drylap.address (DRYLAP_ADDRESS) is '%s'; accepted: how people reach Drylap, such as https://drylap.example.org"
                            .formatted(set));
    }

    /** Without a slash at its end. */
    public String of(HttpServletRequest request) {
        return set.isEmpty()
                ? ServletUriComponentsBuilder.fromContextPath(request).build().toUriString()
                : set;
    }
}
