package drylap.ui.drawn;

import drylap.hooks.Delivery;
import drylap.hooks.Hook;
import drylap.hooks.TryWords;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.tokens.ApiToken;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Tokens, hooks and what was told, as a screen lists them. */
public final class ProgramLines {
    private final Speech say;
    private final ZoneId zone;
    private final Instant now;

    public ProgramLines(Speech say, ZoneId zone, Instant now) {
        this.say = say;
        this.zone = zone;
        this.now = now;
    }

    /** @param ended why it opens nothing any more; none while it does */
    public record TokenLine(
            long id,
            String name,
            String whose,
            String may,
            String times,
            @Nullable String ended) {}

    public record HookLine(
            long id, String name, String whose, String url, String told, List<DeliveryLine> deliveries) {}

    /** @param failing it was tried in vain, or was given up */
    public record DeliveryLine(String words, boolean failing) {}

    public TokenLine token(ApiToken one) {
        return new TokenLine(
                one.id(),
                one.name(),
                say.it("acts for {0}", one.personName()),
                may(one) + "; " + sites(one.reach()),
                say.it(
                        "made {0} by {1}, {2}; ends {3}",
                        moment(one.madeAt()), one.madeBy(), used(one.usedAt()), moment(one.expiresAt())),
                ended(one));
    }

    public HookLine hook(Hook one, List<Delivery> deliveries) {
        String kinds =
                one.kinds().stream().sorted().map(kind -> say.it(kind.words())).collect(Collectors.joining(", "));
        return new HookLine(
                one.id(),
                one.name(),
                say.it("for {0}", one.ownerName()),
                one.url().toString(),
                say.it("told of openings {0}; {1}", kinds, sites(one.reach())),
                deliveries.stream().map(this::delivery).toList());
    }

    private DeliveryLine delivery(Delivery one) {
        String what = say.it(
                "{0}, site {1}, {2}",
                moment(one.madeAt()), one.site(), Saying.of(one.kind().words()));
        String last = one.lastWords() == null ? "" : ": " + say.it(TryWords.read(one.lastWords()));
        return switch (one.state()) {
            case DELIVERED -> new DeliveryLine(say.it("{0} – delivered", what), false);
            case GIVEN_UP -> new DeliveryLine(say.it("{0} – given up after {1}", what, tries(one)) + last, true);
            case WAITING ->
                one.lastWords() == null || one.dueAt() == null
                        ? new DeliveryLine(say.it("{0} – on its way", what), false)
                        : new DeliveryLine(
                                say.it("{0} – {1} in vain{2}; again {3}", what, tries(one), last, moment(one.dueAt())),
                                true);
        };
    }

    private String tries(Delivery one) {
        return say.it("{0, plural, one {# try} other {# tries}}", one.attempts());
    }

    private String may(ApiToken one) {
        return say.it(
                "may {0}",
                one.scopes().stream()
                        .sorted()
                        .map(scope -> say.it(scope.words()))
                        .collect(Collectors.joining("; ")));
    }

    private @Nullable String ended(ApiToken one) {
        if (one.revokedAt() != null)
            return say.it("revoked {0} by {1}", moment(one.revokedAt()), String.valueOf(one.revokedBy()));
        return one.inUse(now) ? null : say.it("has ended");
    }

    private String used(@Nullable Instant at) {
        return at == null ? say.it("not used yet") : say.it("last used {0}", moment(at));
    }

    private String sites(Reach reach) {
        return reach.everySite()
                ? say.it("every site of the person")
                : say.it(
                        "at {0}",
                        reach.sites().stream().sorted().map(SiteId::value).collect(Collectors.joining(", ")));
    }

    private String moment(Instant at) {
        return say.moment(at, zone);
    }
}
