/** What installs take: strips and how they are cut from rolls, pans, sealant, fasteners, windows; by opening, by crew and day, by day and by site. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "assembly", "sites", "planning"})
package drylap.takeoff;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
