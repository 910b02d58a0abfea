/** Tells other programs of releases, acceptances and returns: hooks, what was sent to them, and the sending. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "security", "handoff", "persistence", "platform", "speech"})
package drylap.hooks;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
