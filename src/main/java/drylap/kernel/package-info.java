/** Ids, units and the few words that every module shares; JDK only. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package drylap.kernel;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
