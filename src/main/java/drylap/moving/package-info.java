/** Moves a visit by hand: the audit's verdict first, then a new plan in which it is pinned. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "sites", "planning", "audit", "security"})
package drylap.moving;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
