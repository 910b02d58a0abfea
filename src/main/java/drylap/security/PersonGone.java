package drylap.security;

import drylap.kernel.PersonId;
import java.time.Instant;

/**
 * Someone is taken away: told in the transaction that does it, so that whatever lets them, or others in their name, in ends with it.
 *
 * @param by who takes them away
 */
public record PersonGone(PersonId id, Person by, Instant at) {}
