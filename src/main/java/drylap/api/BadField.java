package drylap.api;

/**
 * What is wrong with one field.
 *
 * @param field where: {@code marks[3].markedAt}
 * @param problem what is there, and what would be accepted
 */
public record BadField(String field, String problem) {}
