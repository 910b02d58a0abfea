/** The administrator's screens: people and their rights, and the history. */
@NullMarked
package drylap.ui.admin;

import org.jspecify.annotations.NullMarked;
