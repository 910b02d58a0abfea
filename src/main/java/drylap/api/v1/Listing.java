package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part of a list.
 *
 * @param next where the rest begins, for the parameter {@code cursor}; none where this was the last part
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record Listing<T>(List<T> items, @Nullable String next) {}
