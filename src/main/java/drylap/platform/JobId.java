package drylap.platform;

/** A job in the database. */
public record JobId(long value) {}
