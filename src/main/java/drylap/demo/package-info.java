/** The sample job folder that a new database starts with. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"kernel", "assembly", "sites", "security", "progress", "handoff", "planning", "intake"})
package drylap.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
