/** The rules of the wall: layers, laps, steps, rain rating, water path; pure, from tables. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech"})
package drylap.assembly;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
