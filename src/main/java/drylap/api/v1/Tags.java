package drylap.api.v1;

import drylap.security.Secret;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Base64;
import org.springframework.http.CacheControl;
import org.springframework.http.ETag;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import tools.jackson.databind.json.JsonMapper;

/** Entity tags (RFC 9110, 8.8.3): the same for the same content only, so that a change says which content it was decided upon. */
final class Tags {
    /** Nobody else keeps it, and whoever kept it asks whether it is still so. */
    static final CacheControl CACHE = CacheControl.noCache().cachePrivate();

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Tags() {}

    static String of(Object content) {
        byte[] digest = Secret.sha256(JSON.writeValueAsString(content));
        return "\"%s\"".formatted(Base64.getUrlEncoder().withoutPadding().encodeToString(digest));
    }

    /** With its tag; who names the tag that is still right is answered without a body. */
    static <T> ResponseEntity<T> answer(T content) {
        return ResponseEntity.ok().cacheControl(CACHE).eTag(of(content)).body(content);
    }

    /** @throws Refused where the request does not name what it was decided upon, or that is no longer so */
    static void demand(HttpServletRequest request, Object now) {
        String named = request.getHeader(HttpHeaders.IF_MATCH);
        var tags = named == null ? java.util.List.<ETag>of() : ETag.parse(named);
        if (tags.isEmpty() || tags.stream().anyMatch(ETag::isWildcard))
            throw Refused.unnamed(
                    "the header If-Match is missing or names no tag; accepted: the ETag of what you read");
        String right = of(now);
        if (tags.stream().noneMatch(tag -> !tag.weak() && right.equals("\"%s\"".formatted(tag.tag()))))
            throw Refused.changed();
    }
}
