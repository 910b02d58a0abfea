/** Rough openings as they were measured on site, and what that means against the tolerances in force. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"kernel", "speech", "sites", "security", "persistence", "platform", "progress"})
package drylap.roughopening;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
