/** Java's side of the Lit components in the frontend folder: records in, events out. */
@NullMarked
package drylap.ui.components;

import org.jspecify.annotations.NullMarked;
