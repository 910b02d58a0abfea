/** What a job would become if something were otherwise: named changes of a copy of the folder, planned side by side. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "sites", "weather", "crews", "planning", "security", "speech"})
package drylap.whatif;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
