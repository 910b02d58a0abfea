package drylap.kernel;

/** A job folder that was imported; its ids are unique within it only. */
public record FolderId(long value) {}
