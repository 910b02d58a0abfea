/** Tables as workbooks (Office Open XML): cells that are numbers, dates and times where they are, and text that no program takes for a formula. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package drylap.tables;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
