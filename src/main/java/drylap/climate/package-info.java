/** The weather that no forecast tells: drawn from monthly normals, from a site's record of forecasts, or from an assumption. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "sites", "speech", "weather", "security", "persistence"})
package drylap.climate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
