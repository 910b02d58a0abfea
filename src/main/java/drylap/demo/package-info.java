/** The sample job folder that a new database starts with. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "sites", "planning", "intake", "security"})
package drylap.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
