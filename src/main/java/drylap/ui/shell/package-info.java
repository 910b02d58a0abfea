/** The frame around every screen: which folder lies on the table, its planning run, the way between the screens. */
@NullMarked
package drylap.ui.shell;

import org.jspecify.annotations.NullMarked;
