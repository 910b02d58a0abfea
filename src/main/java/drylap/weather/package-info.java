/** Forecasts, driving rain on a facade, daylight, and the hours that are open for a task. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "sites", "persistence"})
package drylap.weather;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
