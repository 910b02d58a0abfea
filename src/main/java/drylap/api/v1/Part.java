package drylap.api.v1;

import drylap.api.BadField;
import drylap.api.BadFields;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * Which part of a list is asked for. A list is in the order of a key that its things never change, and a part goes on behind the last key
 * of the one before: what is added or taken away meanwhile makes nothing appear twice or be left out.
 */
record Part(int limit, @Nullable String after) {
    private static final int USUAL = 50;
    private static final int MOST = 200;

    /** @throws BadFields where one of them cannot be read */
    static Part of(@Nullable String limit, @Nullable String cursor) {
        List<BadField> bad = new ArrayList<>();
        int most = limit == null ? USUAL : number(limit);
        if (most < 1 || most > MOST)
            bad.add(new BadField("limit", "is %s; accepted: a whole number from 1 to %d".formatted(limit, MOST)));
        String after = cursor == null ? null : key(cursor, bad);
        if (!bad.isEmpty()) throw new BadFields(bad);
        return new Part(most, after);
    }

    private static int number(String text) {
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : 0;
    }

    private static @Nullable String key(String cursor, List<BadField> bad) {
        try {
            return new String(Base64.getUrlDecoder().decode(cursor), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException none) {
            bad.add(new BadField("cursor", "is none; accepted: that of the link to the next part, as it is"));
            return null;
        }
    }

    /** @param shown asked of those only that are in this part */
    <S, T> ResponseEntity<Listing<T>> of(List<S> all, Function<S, String> key, Function<S, T> shown) {
        List<S> rest = all.stream()
                .filter(one -> after == null || key.apply(one).compareTo(after) > 0)
                .sorted(Comparator.comparing(key))
                .limit(limit + 1L)
                .toList();
        List<S> here = rest.subList(0, Math.min(limit, rest.size()));
        String next = rest.size() > limit ? cursor(key.apply(here.getLast())) : null;
        var answer = new Listing<>(here.stream().map(shown).toList(), next);
        var head = ResponseEntity.ok().cacheControl(Tags.CACHE).eTag(Tags.of(answer));
        if (next != null) head.header(HttpHeaders.LINK, "<%s>; rel=\"next\"".formatted(address(next)));
        return head.body(answer);
    }

    private static String cursor(String key) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(key.getBytes(StandardCharsets.UTF_8));
    }

    /** Without the host, which a proxy may know by another name (RFC 8288 takes it as relative to what was asked for). */
    private static String address(String cursor) {
        var whole = ServletUriComponentsBuilder.fromCurrentRequest()
                .replaceQueryParam("cursor", cursor)
                .build();
        return whole.getPath() + "?" + whole.getQuery();
    }
}
