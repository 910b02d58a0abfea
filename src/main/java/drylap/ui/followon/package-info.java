/** The screens of the trade that follows the window crew: aprons that wait for it, and the records of handing over. */
@NullMarked
package drylap.ui.followon;

import org.jspecify.annotations.NullMarked;
