/** Reads a contractor's window schedule, CSV, XLSX or a building model, and says what its rows become among the openings of a site. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "assembly", "sites", "planning", "buildingmodel"})
package drylap.windowschedule;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
