/** Two hundred people at work on one node for a while: what each kind of request takes, and whether memory and push keep up. */
@NullMarked
package drylap.load;

import org.jspecify.annotations.NullMarked;
