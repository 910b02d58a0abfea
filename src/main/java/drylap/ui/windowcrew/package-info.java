/** The window crew's screens: the day, stop by stop. The steps of an opening are a page of their own. */
@NullMarked
package drylap.ui.windowcrew;

import org.jspecify.annotations.NullMarked;
