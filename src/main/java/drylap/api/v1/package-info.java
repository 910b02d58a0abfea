/** What other programs may call: described by {@code src/docs/api/v1.yaml}, which is served as it is and checked by tests. */
@NullMarked
package drylap.api.v1;

import org.jspecify.annotations.NullMarked;
