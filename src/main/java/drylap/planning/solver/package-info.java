/**
 * The planner's inside: the job folder compiled to whole minutes, a decoder that turns crew lists into a legal schedule, and
 * the search over those lists. Nothing of it leaves this package but a finished plan.
 */
@NullMarked
package drylap.planning.solver;

import org.jspecify.annotations.NullMarked;
