/** What other programs show in place of a password: tokens, which give less than their person may and never more. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "security", "persistence", "platform", "speech"})
package drylap.tokens;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
