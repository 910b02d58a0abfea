/** Papers for the site as PDF: a crew's day, a week for the wall, a take-off, the release of a course, a hand-over record. Records in, bytes out; what they say is worked out elsewhere. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech"})
package drylap.papers;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
