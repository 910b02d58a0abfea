package drylap.hooks;

import drylap.handoff.ActKind;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import java.net.URI;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An address that is told of acts, as those see it who look after it; its secret is not shown again.
 *
 * @param owner whose rights decide of which sites it is told
 * @param reach the sites that it is narrowed to; everywhere: wherever the owner may see
 */
public record Hook(
        long id,
        PersonId owner,
        String ownerName,
        String name,
        URI url,
        Set<ActKind> kinds,
        Reach reach,
        String madeBy,
        Instant madeAt,
        @Nullable Instant endedAt) {
    public Hook {
        kinds = Set.copyOf(kinds);
    }

    public boolean inUse() {
        return endedAt == null;
    }
}
