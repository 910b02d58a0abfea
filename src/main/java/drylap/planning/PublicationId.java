package drylap.planning;

public record PublicationId(long value) {}
