package drylap.hooks;

import drylap.speech.Saying;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;

/** Whether an address may be one of a hook, as far as its text tells; where its name leads is looked at with every sending. */
final class HookAddress {
    private static final int LONGEST = 500;

    private HookAddress() {}

    /** What speaks against it, in words. */
    static Optional<Saying> against(String text, boolean insideAllowed) {
        Saying accepted = insideAllowed ? TryWords.EITHER.with("https://…", "http://…") : Saying.asItIs("https://…");
        URI address;
        try {
            address = new URI(text);
        } catch (URISyntaxException none) {
            return Optional.of(TryWords.NO_ADDRESS.with(text, accepted));
        }
        String scheme = address.getScheme() == null ? "" : address.getScheme().toLowerCase(Locale.ROOT);
        boolean known = scheme.equals("https") || (insideAllowed && scheme.equals("http"));
        if (!known || address.getHost() == null) return Optional.of(TryWords.WRONG_BEGINNING.with(text, accepted));
        if (address.getUserInfo() != null || address.getFragment() != null)
            return Optional.of(TryWords.MORE_THAN_AN_ADDRESS.with(text, accepted));
        return text.length() > LONGEST ? Optional.of(TryWords.TOO_LONG.with(text.length(), LONGEST)) : Optional.empty();
    }
}
