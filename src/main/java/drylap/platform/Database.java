package drylap.platform;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** The PostgreSQL that the application works on. */
sealed interface Database extends AutoCloseable permits EmbeddedDatabase, RunningDatabase, ExternalDatabase {
    String url();

    @Nullable
    String user();

    @Nullable
    String password();

    /** Other applications may work on it at the same time. */
    boolean shared();

    @Override
    void close() throws IOException;
}
