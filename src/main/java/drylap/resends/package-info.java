/** The answers to changes that other programs send with a key of their own, so that what is sent twice is done once. */
@NullMarked
@ApplicationModule(allowedDependencies = {"persistence", "platform"})
package drylap.resends;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
