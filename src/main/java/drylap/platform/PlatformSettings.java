package drylap.platform;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Where the data is, and how background work is done.
 *
 * @param data folder of the embedded database
 * @param files folder of photos; empty: beside the embedded database, else in the database itself
 * @param db a database that someone else runs; without a url the embedded one is started
 */
@ConfigurationProperties("drylap")
record PlatformSettings(
        @DefaultValue("data") Path data,
        @DefaultValue String files,
        @DefaultValue Db db,
        @DefaultValue Work work) {
    record Db(
            @Nullable String url,
            @Nullable String user,
            @Nullable String password) {}

    /**
     * @param threads jobs that this node does at a time; 0: it only answers, and leaves jobs and what is due again and again to others
     * @param heartbeatSeconds how often a node that has a job says that it lives; silent four times long, it is dead
     * @param regular whether this node takes part in what is due again and again
     * @param alone whether this node has no page, and only works
     */
    record Work(
            @DefaultValue("2") int threads,
            @DefaultValue("3") int heartbeatSeconds,
            @DefaultValue("true") boolean regular,
            @DefaultValue("false") boolean alone) {
        private static final int MOST_THREADS = 64;

        Work {
            if (threads < 0 || threads > MOST_THREADS || alone && threads == 0)
                throw new IllegalArgumentException("DRYLAP_WORK_THREADS is %d; accepted: %d to %d%s"
                        .formatted(
                                threads,
                                alone ? 1 : 0,
                                MOST_THREADS,
                                alone ? " for a worker" : ", 0 for a node that only answers"));
        }
    }
}
