/** Reads a contractor's window schedule, CSV or XLSX, and says what its rows become among the openings of a site. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "assembly", "sites", "planning"})
package drylap.windowschedule;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
