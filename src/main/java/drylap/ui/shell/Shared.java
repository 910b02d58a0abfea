package drylap.ui.shell;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.platform.News;
import java.lang.ref.WeakReference;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BinaryOperator;
import java.util.function.Supplier;

/**
 * One fetch for all open pages that were told of the same change and may see the same: each by itself would fetch everything, and with sixty
 * pages open a node would do nothing else. A page gets what was fetched after the news that it shows, never what was fetched before. What holds
 * the same as what another page shows is kept once, for as long as any page shows it.
 *
 * @param <V> what is fetched; it never changes
 */
public final class Shared<V> {
    private static final Duration KEPT = Duration.ofSeconds(10);
    private static final int MOST = 32;

    private final BinaryOperator<V> latest;
    private final AtomicLong told = new AtomicLong();
    private final Cache<Sight, Fetch<V>> last;
    private final Cache<Sight, WeakReference<V>> seen =
            Caffeine.newBuilder().maximumSize(MOST).build();

    /** @param told how many news had been told when it began */
    private record Fetch<V>(long told, FutureTask<V> task) {}

    /** @param latest of what was shown and what was fetched: what was shown where both hold the same, else what was fetched */
    public Shared(News news, BinaryOperator<V> latest) {
        this(news, latest, KEPT);
    }

    Shared(News news, BinaryOperator<V> latest, Duration kept) {
        this.latest = latest;
        last = Caffeine.newBuilder().expireAfterWrite(kept).maximumSize(MOST).build();
        // this begins before any page does, so it is told before them
        news.listen(_ -> told.incrementAndGet());
    }

    /** As it stands now: for what a page's own person asks or did, which nobody may miss. */
    public V own(Sight sight, Supplier<V> fetch) {
        return kept(sight, fetch.get());
    }

    /** As it stands by all news so far, or by later ones. */
    public V told(Sight sight, Supplier<V> fetch) {
        long now = told.get();
        Fetch<V> one = last.asMap()
                .compute(
                        sight,
                        (_, before) -> before != null && before.told() >= now
                                ? before
                                : new Fetch<>(now, new FutureTask<>(() -> own(sight, fetch))));
        // whoever comes first does it, the others wait
        one.task().run();
        return done(sight, one);
    }

    private V kept(Sight sight, V fetched) {
        var before = seen.getIfPresent(sight);
        V shown = before == null ? null : before.get();
        V kept = shown == null ? fetched : latest.apply(shown, fetched);
        if (kept != shown) seen.put(sight, new WeakReference<>(kept));
        return kept;
    }

    private V done(Sight sight, Fetch<V> fetch) {
        try {
            return fetch.task().get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while something is fetched", stopped);
        } catch (ExecutionException failure) {
            last.asMap().remove(sight, fetch);
            if (failure.getCause() instanceof RuntimeException why) throw why;
            throw new IllegalStateException(failure);
        }
    }
}
