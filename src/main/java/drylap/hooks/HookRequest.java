package drylap.hooks;

import drylap.handoff.ActKind;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.speech.Saying;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** A hook that someone asks for. */
public record HookRequest(PersonId owner, String name, String url, Set<ActKind> kinds, Reach reach) {
    /** Of what a hook may be told. */
    public static final Set<ActKind> KINDS =
            Set.copyOf(EnumSet.of(ActKind.RELEASED, ActKind.ACCEPTED, ActKind.RETURNED));

    private static final int LONGEST_NAME = 80;

    public HookRequest {
        name = name.strip();
        url = url.strip();
        kinds = Set.copyOf(kinds);
    }

    /** What speaks against it, in words; the address is looked at for itself. */
    Optional<Saying> problem() {
        if (name.isEmpty() || name.length() > LONGEST_NAME)
            return Optional.of(
                    Saying.of("the name has {0} characters; accepted: 1 to {1}", name.length(), LONGEST_NAME));
        if (kinds.isEmpty() || !KINDS.containsAll(kinds))
            return Optional.of(
                    Saying.of("it would be told of nothing; accepted: released, accepted, returned, one or more"));
        if (!reach.everySite() && reach.sites().isEmpty())
            return Optional.of(
                    Saying.of("it would be of no site; accepted: one or more, or every one of the person's"));
        return Optional.empty();
    }
}
