package drylap.api.v1;

import drylap.resends.KeptAnswer;
import drylap.security.Secret;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.web.util.ContentCachingResponseWrapper;

/**
 * A change that a program asks for, with the answer as it comes to be.
 *
 * @param key the sender's own, by which it may be sent again; none where it did not send one
 */
record Change(
        HttpServletRequest request, byte[] body, @Nullable String key, ContentCachingResponseWrapper answer) {
    static final String KEY = "Idempotency-Key";

    /** What speaks against the key, in words. A POST says nothing of itself about being sent twice, so it needs one. */
    static Optional<String> against(HttpServletRequest request) {
        String key = request.getHeader(KEY);
        if (key == null)
            return request.getMethod().equals("POST")
                    ? Optional.of(
                            "the header %s is missing; accepted: 8 to 100 characters of your own, new for each change"
                                    .formatted(KEY))
                    : Optional.empty();
        return key.matches("[!-~]{8,100}")
                ? Optional.empty()
                : Optional.of(
                        "the header %s is not well formed; accepted: 8 to 100 printable ASCII characters without spaces"
                                .formatted(KEY));
    }

    /** Over all that decides what is done: sent with the same key, another one is not the same change. */
    byte[] hash() {
        String head = String.join(
                "\n",
                request.getMethod(),
                request.getRequestURI(),
                String.valueOf(request.getQueryString()),
                String.valueOf(request.getHeader(HttpHeaders.IF_MATCH)),
                String.valueOf(request.getHeader(HttpHeaders.IF_NONE_MATCH)),
                String.valueOf(request.getContentType()));
        return Secret.sha256(head + "\n\n" + new String(body, StandardCharsets.ISO_8859_1));
    }

    boolean done() {
        return answer.getStatus() < HttpStatus.BAD_REQUEST.value();
    }

    /** Refused for what is, and not because it could not be read or was never begun. */
    boolean refused() {
        return switch (answer.getStatus()) {
            case 409, 412, 422 -> true;
            default -> false;
        };
    }

    KeptAnswer kept() {
        return new KeptAnswer(
                answer.getStatus(),
                answer.getContentType(),
                answer.getHeader(HttpHeaders.ETAG),
                answer.getHeader(HttpHeaders.LOCATION),
                answer.getContentAsByteArray());
    }

    /** Sends what was answered before. */
    void send(KeptAnswer before) throws IOException {
        answer.reset();
        answer.setStatus(before.status());
        if (before.contentType() != null) answer.setContentType(before.contentType());
        if (before.etag() != null) answer.setHeader(HttpHeaders.ETAG, before.etag());
        if (before.location() != null) answer.setHeader(HttpHeaders.LOCATION, before.location());
        answer.setHeader(HttpHeaders.CACHE_CONTROL, "no-cache, private");
        answer.getOutputStream().write(before.body());
        answer.copyBodyToResponse();
    }
}
