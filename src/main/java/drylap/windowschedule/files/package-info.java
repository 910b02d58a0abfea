/** Files as sheets of text cells, with limits that hold before anything is unpacked into memory. */
@NullMarked
package drylap.windowschedule.files;

import org.jspecify.annotations.NullMarked;
