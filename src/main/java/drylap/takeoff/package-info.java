/** What installs take: strips and how they are cut from rolls, pans, sealant, fasteners, windows; by opening and by crew and day. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "assembly", "sites", "planning"})
package drylap.takeoff;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
