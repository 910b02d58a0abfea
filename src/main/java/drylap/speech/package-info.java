/** What is said to people, in the language that each reads: sentences with places, dates, numbers and lengths. */
@NullMarked
@ApplicationModule(allowedDependencies = "kernel")
package drylap.speech;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
