package drylap.kernel;

/** Someone who may sign in. */
public record PersonId(long value) {}
