package drylap.api.v1;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;

/** How much a token may ask of this node, so that a program that runs wild keeps nobody else waiting. */
final class Budget {
    /** Of a program that polls every opening of a large job once a minute, with room; common practice, no source. */
    static final int MOST = 1_200;

    static final Duration WITHIN = Duration.ofMinutes(1);

    private final int most;
    private final Cache<Long, AtomicInteger> spent =
            Caffeine.newBuilder().expireAfterWrite(WITHIN).build();

    Budget() {
        this(MOST);
    }

    Budget(int most) {
        this.most = most;
    }

    /** Whether there was any left; counted anew once a minute has gone by since the first of them. */
    boolean spend(long token) {
        return Objects.requireNonNull(spent.get(token, _ -> new AtomicInteger()))
                        .incrementAndGet()
                <= most;
    }
}
