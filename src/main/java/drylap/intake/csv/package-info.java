/** Tables of the contract as RFC 4180 text: headers, typed rows that collect what is wrong, and the way out. */
@NullMarked
package drylap.intake.csv;

import org.jspecify.annotations.NullMarked;
