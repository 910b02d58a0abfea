/** People, their roles and sites, what each may do, who is signed in, and who changed what. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "persistence", "platform"})
package drylap.security;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
