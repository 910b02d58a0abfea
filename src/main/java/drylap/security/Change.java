package drylap.security;

import drylap.kernel.SiteId;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of the history.
 *
 * @param site where it belongs to one site
 * @param what the change in a sentence without its subject: "published plan 12"
 */
public record Change(
        long id, Instant at, String person, @Nullable SiteId site, String what) {}
