package drylap.hooks;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.handoff.ActKind;
import drylap.kernel.SiteId;
import java.io.IOException;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SenderTests {
    private static final Instant NOW = Instant.parse("2026-04-13T19:00:00Z");
    private static final Delivery DELIVERY = new Delivery(
            new UUID(1, 2),
            1,
            ActKind.RELEASED,
            new SiteId("north"),
            "{\"kind\":\"released\"}",
            NOW,
            DeliveryState.WAITING,
            NOW,
            1,
            null,
            null);
    private final OtherProgram program = new OtherProgram();

    @AfterEach
    void close() {
        program.close();
    }

    private static Sender.Outcome send(String inside, String url) throws IOException {
        var settings = new HookSettings(inside, Duration.ofSeconds(20), Duration.ofSeconds(20));
        try (var sender = new Sender(settings, Clock.fixed(NOW, ZoneOffset.UTC))) {
            return sender.send(DELIVERY, URI.create(url), "a secret");
        }
    }

    @Test
    void what_is_sent_is_named_dated_and_signed() throws IOException {
        assertThat(send("allow", program.url())).isEqualTo(new Sender.Outcome(true, "answered 200"));

        var got = program.got.getFirst();
        assertThat(got.body()).isEqualTo(DELIVERY.body());
        assertThat(got.type()).startsWith("application/json");
        assertThat(got.delivery()).isEqualTo(new UUID(1, 2).toString());
        assertThat(got.sentAt()).isEqualTo(String.valueOf(NOW.getEpochSecond()));
        assertThat(got.signature()).isEqualTo(Signature.of("a secret", got.sentAt(), got.body()));
    }

    @Test
    void a_redirect_is_not_followed_and_only_2xx_is_taken() throws IOException {
        for (int status : new int[] {301, 307, 404, 500}) {
            program.status = status;
            assertThat(send("allow", program.url())).isEqualTo(new Sender.Outcome(false, "answered " + status));
        }
        assertThat(program.got).hasSize(4).allMatch(one -> one.path().equals("/told"));
    }

    @Test
    void what_is_not_in_the_public_network_is_not_even_asked() throws IOException {
        for (String host : new String[] {"127.0.0.1", "localhost", "[::1]", "169.254.169.254", "2130706433"}) {
            var outcome = send("", "https://%s:%d/told".formatted(host, program.port()));
            assertThat(outcome.taken()).as(host).isFalse();
            assertThat(outcome.words()).as(host).containsAnyOf("not in the public network", "is not known");
        }
        assertThat(send("", "https://127.0.0.1:%d/".formatted(program.port())).words())
                .isEqualTo("127.0.0.1 leads to 127.0.0.1, which is not in the public network");
        assertThat(send("", program.url()).words()).contains("accepted: https://");
        assertThat(program.got).isEmpty();
    }

    @Test
    void who_is_not_there_is_named() throws IOException {
        program.close();

        assertThat(send("allow", program.url()).words()).startsWith("127.0.0.1 cannot be reached");
    }
}
