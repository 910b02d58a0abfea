/** Reads the clear text of ISO 10303-21 (STEP physical file), one entity after the other, within limits. */
@NullMarked
package drylap.buildingmodel.step;

import org.jspecify.annotations.NullMarked;
