package drylap.platform;

import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/** What this node has counted, in the text format of Prometheus (prometheus.io, exposition formats, 0.0.4). Names and sites are in none of it. */
@Service
public final class MetricsText {
    public static final String CONTENT_TYPE = "text/plain; version=0.0.4; charset=utf-8";
    static final int FEWEST_LETTERS = 16;
    private static final Logger LOG = LoggerFactory.getLogger(MetricsText.class);
    private static final String SCHEME = "Bearer ";

    private final PrometheusMeterRegistry meters;
    private final List<Measured> measured;
    private final byte[] expected;

    MetricsText(
            PrometheusMeterRegistry meters, List<Measured> measured, @Value("${drylap.metrics.token:}") String token) {
        if (!token.isEmpty() && token.length() < FEWEST_LETTERS)
            throw new IllegalArgumentException(
                    "DRYLAP_METRICS_TOKEN has %d characters; accepted: at least %d, or none, and there are no metrics"
                            .formatted(token.length(), FEWEST_LETTERS));
        this.meters = meters;
        this.measured = measured;
        expected = (SCHEME + token).getBytes(StandardCharsets.UTF_8);
    }

    /** Whether there is a token at all; without one there are no metrics for anybody. */
    public boolean on() {
        return expected.length > SCHEME.length();
    }

    /**
     * Whether the header {@code Authorization} shows the token; a wrong one takes as long as the right one.
     *
     * @param authorization the whole header; empty where there is none
     */
    public boolean opens(String authorization) {
        return on() && MessageDigest.isEqual(authorization.getBytes(StandardCharsets.UTF_8), expected);
    }

    public String text() {
        for (Measured one : measured) {
            try {
                one.measure();
            } catch (RuntimeException away) {
                LOG.warn("Some numbers cannot be looked up for the moment: {}", away.getMessage());
            }
        }
        return meters.scrape();
    }
}
