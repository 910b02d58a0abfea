package drylap.ui.drawn;

import drylap.handoff.ActKind;
import drylap.hooks.Delivery;
import drylap.hooks.Hook;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.tokens.ApiToken;
import drylap.tokens.Scope;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Tokens, hooks and what was told, as a screen lists them. */
public final class ProgramLines {
    private final ZoneId zone;
    private final Instant now;

    public ProgramLines(ZoneId zone, Instant now) {
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
                "acts for " + one.personName(),
                may(one) + "; " + sites(one.reach()),
                "made %s by %s, %s; ends %s"
                        .formatted(moment(one.madeAt()), one.madeBy(), used(one.usedAt()), moment(one.expiresAt())),
                ended(one));
    }

    public HookLine hook(Hook one, List<Delivery> deliveries) {
        String kinds = one.kinds().stream().sorted().map(ActKind::words).collect(Collectors.joining(", "));
        return new HookLine(
                one.id(),
                one.name(),
                "for " + one.ownerName(),
                one.url().toString(),
                "told of openings %s; %s".formatted(kinds, sites(one.reach())),
                deliveries.stream().map(this::delivery).toList());
    }

    private DeliveryLine delivery(Delivery one) {
        String what = "%s, site %s, %s"
                .formatted(moment(one.madeAt()), one.site(), one.kind().words());
        String last = one.lastWords() == null ? "" : ": " + one.lastWords();
        return switch (one.state()) {
            case DELIVERED -> new DeliveryLine("%s – delivered".formatted(what), false);
            case GIVEN_UP -> new DeliveryLine("%s – given up after %s%s".formatted(what, tries(one), last), true);
            case WAITING ->
                one.lastWords() == null || one.dueAt() == null
                        ? new DeliveryLine("%s – on its way".formatted(what), false)
                        : new DeliveryLine(
                                "%s – %s in vain%s; again %s".formatted(what, tries(one), last, moment(one.dueAt())),
                                true);
        };
    }

    private static String tries(Delivery one) {
        return one.attempts() == 1 ? "1 try" : "%d tries".formatted(one.attempts());
    }

    private static String may(ApiToken one) {
        return "may " + one.scopes().stream().sorted().map(Scope::words).collect(Collectors.joining("; "));
    }

    private @Nullable String ended(ApiToken one) {
        if (one.revokedAt() != null) return "revoked %s by %s".formatted(moment(one.revokedAt()), one.revokedBy());
        return one.inUse(now) ? null : "has ended";
    }

    private String used(@Nullable Instant at) {
        return at == null ? "not used yet" : "last used " + moment(at);
    }

    private static String sites(Reach reach) {
        return reach.everySite()
                ? "every site of the person"
                : "at " + reach.sites().stream().sorted().map(SiteId::value).collect(Collectors.joining(", "));
    }

    private String moment(Instant at) {
        return Words.moment(at, zone);
    }
}
