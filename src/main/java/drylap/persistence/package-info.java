/** The tables as jOOQ classes, generated from the migrations at build time; the rows belong to the modules that write them. */
@NullMarked
@ApplicationModule(type = ApplicationModule.Type.OPEN, allowedDependencies = "kernel")
package drylap.persistence;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
