package drylap.platform;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * With a database of our own, files lie in a folder beside it. On a database that others run there may be several nodes, and a folder
 * of one of them is none of the others: files lie in their rows until someone names a folder.
 */
@Configuration(proxyBeanMethods = false)
class FileConfiguration {
    @Bean
    FileShelf fileShelf(
            PlatformSettings settings, Database database, DSLContext db, TransactionTemplate transaction, Clock clock) {
        var claim = new FileFolderClaim(db, transaction, clock);
        var folder = path(settings, database).map(FileFolder::in);
        folder.ifPresentOrElse(claim::of, claim::ofNone);
        return new FileShelf(folder);
    }

    private static Optional<Path> path(PlatformSettings settings, Database database) {
        if (!settings.files().isBlank()) return Optional.of(Path.of(settings.files()));
        return database.shared()
                ? Optional.empty()
                : Optional.of(settings.data().resolve("files"));
    }
}
