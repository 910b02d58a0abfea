/** The scheduler's screens. */
@NullMarked
package drylap.ui.planner;

import org.jspecify.annotations.NullMarked;
