package drylap.platform;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.function.ToDoubleFunction;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Where everything that is counted on this node is counted: the process, its way to the database, and what modules add. */
@Configuration(proxyBeanMethods = false)
class MeterConfiguration {
    @Bean(destroyMethod = "close")
    PrometheusMeterRegistry meters() {
        var meters = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
        new JvmMemoryMetrics().bindTo(meters);
        new JvmThreadMetrics().bindTo(meters);
        new ProcessorMetrics().bindTo(meters);
        new UptimeMetrics().bindTo(meters);
        return meters;
    }

    @Bean(destroyMethod = "close")
    JvmGcMetrics collections(PrometheusMeterRegistry meters) {
        var collections = new JvmGcMetrics();
        collections.bindTo(meters);
        return collections;
    }

    @Bean
    PoolMeters poolMeters(PrometheusMeterRegistry meters, DataSource database) {
        return new PoolMeters(meters, database);
    }

    /** Connections to the database: in use, idle, and threads that wait for one. */
    static final class PoolMeters {
        private final DataSource database;

        PoolMeters(PrometheusMeterRegistry meters, DataSource database) {
            this.database = database;
            gauge(meters, "drylap.database.connections.used", HikariPoolMXBean::getActiveConnections);
            gauge(meters, "drylap.database.connections.idle", HikariPoolMXBean::getIdleConnections);
            gauge(meters, "drylap.database.connections.waited.for", HikariPoolMXBean::getThreadsAwaitingConnection);
        }

        private void gauge(PrometheusMeterRegistry meters, String name, ToDoubleFunction<HikariPoolMXBean> of) {
            Gauge.builder(name, this, self -> self.pool(of)).register(meters);
        }

        private double pool(ToDoubleFunction<HikariPoolMXBean> of) {
            if (!(database instanceof HikariDataSource hikari)) return Double.NaN;
            HikariPoolMXBean pool = hikari.getHikariPoolMXBean();
            return pool == null ? Double.NaN : of.applyAsDouble(pool);
        }
    }
}
