/** Looks at pictures before they are kept: by content and not by name, without what cameras write beside them, with a small copy. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech"})
package drylap.pictures;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
