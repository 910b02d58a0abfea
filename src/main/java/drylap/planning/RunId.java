package drylap.planning;

/** A planning run. */
public record RunId(long value) {}
