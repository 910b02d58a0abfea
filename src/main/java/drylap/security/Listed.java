package drylap.security;

/**
 * A person in the administrator's list.
 *
 * @param takenAway whether a number stands for their name, for good
 * @param version of what is known of them, to notice when someone else changes it meanwhile
 */
public record Listed(Person person, boolean active, boolean takenAway, int version) {}
