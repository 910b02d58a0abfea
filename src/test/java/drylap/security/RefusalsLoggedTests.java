package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.joran.JoranConfigurator;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.LoggingEvent;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.read.ListAppender;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Numbers in brackets are requirements of OWASP ASVS 4.0.3. */
class RefusalsLoggedTests {
    private static final SiteId QUAY = new SiteId("Q");
    private static final Person WHO = new Person(
            new PersonId(4711), "nora.night", "Nora Night", Role.WINDOW_CREW, Reach.of(Set.of(QUAY)), null, false);

    /** [7.1.1, 7.1.3, 7.2.2] */
    @Test
    void a_refused_right_is_logged_once_by_number_and_never_by_name() {
        var kept = new ListAppender<ILoggingEvent>();
        kept.start();
        var logger = (Logger) LoggerFactory.getLogger(NotAllowed.class);
        logger.addAppender(kept);
        try {
            WHO.demand(Operation.MARK_INSTALL, QUAY);
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> WHO.demand(Operation.SEE_PEOPLE));
            assertThatExceptionOfType(NotAllowed.class)
                    .isThrownBy(() -> WHO.demand(Operation.MARK_INSTALL, new SiteId("M")));
        } finally {
            logger.detachAppender(kept);
        }

        assertThat(kept.list)
                .extracting(ILoggingEvent::getFormattedMessage)
                .containsExactly(
                        "Refused: person 4711 (window crew) may not see people anywhere",
                        "Refused: person 4711 (window crew) may not mark install at site M")
                .noneMatch(line -> line.contains("Nora") || line.contains("nora"));
        assertThat(kept.list).extracting(ILoggingEvent::getLevel).containsOnly(Level.WARN);
    }

    /** [7.3.1] What somebody typed makes no line of its own. */
    @Test
    void a_line_cannot_be_forged() {
        assertThat(new NotAllowed(WHO, Operation.SEE_OPENINGS, "at opening A\n2026 INFO all is well"))
                .hasMessage("person 4711 (window crew) may not see openings at opening A?2026 INFO all is well");
    }

    /** [7.1.4] */
    @Test
    void as_json_each_line_is_an_object_with_the_moment_the_words_and_the_request() {
        JsonNode line = JsonMapper.builder().build().readTree(written("json"));

        assertThat(line.path("timestamp").longValue()).isEqualTo(1_776_096_000_000L);
        assertThat(line.path("level").stringValue()).isEqualTo("WARN");
        assertThat(line.path("formattedMessage").stringValue()).isEqualTo("Refused: person 7");
        assertThat(line.path("mdc").path("request").stringValue()).isEqualTo("0-1-2");
    }

    @Test
    void as_text_the_request_stands_behind_the_words() {
        assertThat(written("text")).isEqualTo("2026-04-13T16:00:00Z WARN  Refused: person 7 [0-1-2]\n");
    }

    /** One event, through the very configuration that a node has. */
    private static String written(String form) {
        var context = new LoggerContext();
        context.putProperty("DRYLAP_LOG", form);
        var configurator = new JoranConfigurator();
        configurator.setContext(context);
        try {
            configurator.doConfigure(Objects.requireNonNull(RefusalsLoggedTests.class.getResource("/logback.xml")));
        } catch (ch.qos.logback.core.joran.spi.JoranException wrong) {
            throw new AssertionError(wrong);
        }
        var console = (ConsoleAppender<ILoggingEvent>)
                context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME).getAppender("CONSOLE");
        var event = new LoggingEvent(
                "", context.getLogger("one"), Level.WARN, "Refused: person {}", null, new Object[] {7});
        event.setInstant(Instant.parse("2026-04-13T16:00:00Z"));
        event.setMDCPropertyMap(Map.of("request", "0-1-2"));
        try {
            return new String(console.getEncoder().encode(event), StandardCharsets.UTF_8);
        } finally {
            context.stop();
        }
    }
}
