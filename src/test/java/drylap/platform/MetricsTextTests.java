package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The token of the metrics, and numbers that cannot be looked up. */
class MetricsTextTests {
    private static final String TOKEN = "long-enough-to-be-one";
    private final PrometheusMeterRegistry meters = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);

    private MetricsText of(String token, Measured... measured) {
        return new MetricsText(meters, List.of(measured), token);
    }

    @Test
    void without_a_token_it_is_off_whatever_is_shown() {
        assertThat(of("").on()).isFalse();
        assertThat(of("").opens("Bearer ")).isFalse();
        assertThat(of("").opens("")).isFalse();
    }

    @Test
    void the_whole_token_opens_it_and_nothing_else() {
        assertThat(of(TOKEN).opens("Bearer " + TOKEN)).isTrue();
        assertThat(of(TOKEN).opens("Bearer " + TOKEN + "x")).isFalse();
        assertThat(of(TOKEN).opens("Bearer " + TOKEN.substring(1))).isFalse();
        assertThat(of(TOKEN).opens(TOKEN)).isFalse();
    }

    @Test
    void a_token_that_is_soon_guessed_is_refused_without_being_told() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of("short-one"))
                .withMessage(
                        "DRYLAP_METRICS_TOKEN has 9 characters; accepted: at least 16, or none, and there are no metrics");
    }

    @Test
    void what_cannot_be_looked_up_leaves_the_rest() {
        meters.counter("drylap.test").increment(3);

        String text = of(TOKEN, () -> {
                    throw new IllegalStateException("the database is away");
                })
                .text();

        assertThat(text).contains("drylap_test_total 3.0");
    }
}
