/** Backup and restore: the whole database and the stored files in one file, checked byte by byte on the way back. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "platform"})
package drylap.keeping;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
