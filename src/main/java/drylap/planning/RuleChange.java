package drylap.planning;

import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A rule as someone has set it since the import.
 *
 * @param site where it holds; none for everywhere
 * @param value none where it goes back to what was imported, or else to the default
 */
public record RuleChange(
        long id, @Nullable SiteId site, Rule rule, @Nullable Double value, String reason, String by, Instant at) {}
