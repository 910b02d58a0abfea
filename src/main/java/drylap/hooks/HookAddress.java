package drylap.hooks;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;

/** Whether an address may be one of a hook, as far as its text tells; where its name leads is looked at with every sending. */
final class HookAddress {
    private static final int LONGEST = 500;

    private HookAddress() {}

    /** What speaks against it, in words. */
    static Optional<String> against(String text, boolean insideAllowed) {
        String accepted = insideAllowed ? "https://… or http://…" : "https://…";
        URI address;
        try {
            address = new URI(text);
        } catch (URISyntaxException none) {
            return Optional.of("'%s' is no address; accepted: %s".formatted(text, accepted));
        }
        String scheme = address.getScheme() == null ? "" : address.getScheme().toLowerCase(Locale.ROOT);
        boolean known = scheme.equals("https") || (insideAllowed && scheme.equals("http"));
        if (!known || address.getHost() == null)
            return Optional.of("'%s' does not begin as it should; accepted: %s".formatted(text, accepted));
        if (address.getUserInfo() != null || address.getFragment() != null)
            return Optional.of("'%s' has a name, a password or a part behind #; accepted: %s without them"
                    .formatted(text, accepted));
        return text.length() > LONGEST
                ? Optional.of("it has %d characters; accepted: up to %d".formatted(text.length(), LONGEST))
                : Optional.empty();
    }
}
