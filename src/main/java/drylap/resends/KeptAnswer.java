package drylap.resends;

import org.jspecify.annotations.Nullable;

/** An answer as it was sent. */
public record KeptAnswer(
        int status,
        @Nullable String contentType,
        @Nullable String etag,
        @Nullable String location,
        byte[] body) {}
