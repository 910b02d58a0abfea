/** What the page draws, as plain records, and the presenters that fill them from a folder, its weather and its plan. */
@NullMarked
package drylap.ui.drawn;

import org.jspecify.annotations.NullMarked;
