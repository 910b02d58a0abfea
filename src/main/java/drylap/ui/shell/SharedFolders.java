package drylap.ui.shell;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.kernel.Reach;
import drylap.planning.StoredFolder;
import drylap.platform.News;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Role;
import drylap.ui.drawn.FolderShown;
import java.lang.ref.WeakReference;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;

/**
 * One fetch for all open pages that were told of the same change and may see the same: each by itself would fetch the whole folder, and with sixty
 * pages open a node would do nothing else. A page gets what was fetched after the news that it shows, never what was fetched before. What holds
 * the same as what another page shows is kept once, for as long as any page shows it.
 */
@Component
class SharedFolders {
    private static final Duration KEPT = Duration.ofSeconds(10);
    private static final int MOST = 32;

    private final ShownFolders folders;
    private final AtomicLong told = new AtomicLong();
    private final Cache<Sight, Fetch> last;
    private final Cache<Sight, WeakReference<FolderShown>> seen =
            Caffeine.newBuilder().maximumSize(MOST).build();

    /** Everything of a person by which it is decided what they see. */
    private record Sight(
            Role role, Reach reach, @Nullable Set<Operation> only, StoredFolder stored, boolean published) {}

    /** @param told how many news had been told when it began */
    private record Fetch(long told, FutureTask<FolderShown> shown) {}

    @Autowired
    SharedFolders(ShownFolders folders, News news) {
        this(folders, news, KEPT);
    }

    SharedFolders(ShownFolders folders, News news, Duration kept) {
        this.folders = folders;
        last = Caffeine.newBuilder().expireAfterWrite(kept).maximumSize(MOST).build();
        // this begins before any page does, so it is told before them
        news.listen(_ -> told.incrementAndGet());
    }

    /** As it stands now: for what a page's own person asks or did, which nobody may miss. */
    FolderShown own(Person who, StoredFolder stored, boolean published) {
        return kept(sight(who, stored, published), folders.load(who, stored, published));
    }

    /** As it stands by all news so far, or by later ones. */
    FolderShown load(Person who, StoredFolder stored, boolean published) {
        long now = told.get();
        Sight sight = sight(who, stored, published);
        Fetch fetch = last.asMap()
                .compute(
                        sight,
                        (_, before) -> before != null && before.told() >= now
                                ? before
                                : new Fetch(now, new FutureTask<>(() -> own(who, stored, published))));
        // whoever comes first does it, the others wait
        fetch.shown().run();
        return done(sight, fetch);
    }

    private static Sight sight(Person who, StoredFolder stored, boolean published) {
        return new Sight(who.role(), who.reach(), who.only(), stored, published);
    }

    private FolderShown kept(Sight sight, FolderShown fetched) {
        var before = seen.getIfPresent(sight);
        FolderShown shown = before == null ? null : before.get();
        if (shown != null && shown.shows(fetched)) return shown;
        seen.put(sight, new WeakReference<>(fetched));
        return fetched;
    }

    private FolderShown done(Sight sight, Fetch fetch) {
        try {
            return fetch.shown().get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while a folder is fetched", stopped);
        } catch (ExecutionException failure) {
            last.asMap().remove(sight, fetch);
            if (failure.getCause() instanceof RuntimeException why) throw why;
            throw new IllegalStateException(failure);
        }
    }
}
