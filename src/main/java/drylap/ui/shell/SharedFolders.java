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
 * pages open a node would do nothing else. A page gets what was fetched after the news that it shows, never what was fetched before.
 */
@Component
class SharedFolders {
    private static final Duration KEPT = Duration.ofSeconds(10);
    private static final int MOST = 32;

    private final ShownFolders folders;
    private final AtomicLong told = new AtomicLong();
    private final Cache<Sight, Fetch> last;

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

    /** As it stands by all news so far, or by later ones. */
    FolderShown load(Person who, StoredFolder stored, boolean published) {
        long now = told.get();
        Sight sight = new Sight(who.role(), who.reach(), who.only(), stored, published);
        Fetch fetch = last.asMap()
                .compute(
                        sight,
                        (_, before) -> before != null && before.told() >= now
                                ? before
                                : new Fetch(now, new FutureTask<>(() -> folders.load(who, stored, published))));
        // whoever comes first does it, the others wait
        fetch.shown().run();
        return done(sight, fetch);
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
