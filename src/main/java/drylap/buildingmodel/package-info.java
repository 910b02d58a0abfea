/** Reads the windows of a building model, IFC2X3 or IFC4 in clear text: sizes, storeys, sills and which way they face. */
@NullMarked
@ApplicationModule(allowedDependencies = {"speech"})
package drylap.buildingmodel;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
