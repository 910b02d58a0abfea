/** A site's remaining work against the weather of the next twelve months: usable hours, when it is through, what one more crew changes. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "sites", "climate", "crews", "planning"})
package drylap.season;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
