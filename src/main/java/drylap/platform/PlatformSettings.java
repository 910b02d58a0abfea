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
     * @param threads jobs that this node does at a time
     * @param heartbeatSeconds how often a node that has a job says that it lives; silent four times long, it is dead
     * @param regular whether this node takes part in what is due again and again
     */
    record Work(
            @DefaultValue("2") int threads,
            @DefaultValue("5") int heartbeatSeconds,
            @DefaultValue("true") boolean regular) {}
}
