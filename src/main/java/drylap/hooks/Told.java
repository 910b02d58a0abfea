package drylap.hooks;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.handoff.ActWritten;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a hook is told of an act.
 *
 * @param delivery the same, however often it is sent
 * @param act the number of the hand-over record
 * @param reason the code of why they were returned, where they were
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record Told(
        UUID delivery,
        String kind,
        long act,
        long folder,
        String site,
        List<String> openings,
        Instant at,
        String by,
        @Nullable String reason,
        String note) {
    static Told of(UUID delivery, ActWritten written) {
        var act = written.act();
        var reason = act.reason();
        return new Told(
                delivery,
                act.kind().code(),
                act.id(),
                written.folder().value(),
                act.site().value(),
                act.entries().stream().map(one -> one.opening().value()).toList(),
                act.at(),
                act.who().name(),
                reason == null ? null : reason.code(),
                act.note());
    }
}
