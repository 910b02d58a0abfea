/** Forecasts from open sources: read into one form, fetched politely, kept with their times. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"kernel", "sites", "weather", "security", "persistence", "platform", "speech"})
package drylap.forecasts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
