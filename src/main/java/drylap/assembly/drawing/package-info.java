/** Draws the lap section; nothing outside the module uses it but through {@code LapSection}. */
@NullMarked
package drylap.assembly.drawing;

import org.jspecify.annotations.NullMarked;
