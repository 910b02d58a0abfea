package drylap.forecasts.fetching;

import static drylap.forecasts.ForecastSource.CSV;
import static drylap.forecasts.ForecastSource.MET_NORWAY;
import static drylap.forecasts.ForecastSource.OPEN_METEO;
import static drylap.forecasts.ForecastSource.US_WEATHER_SERVICE;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.forecasts.ForecastReader;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastSettings;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.Payload;
import java.io.IOException;
import java.net.ServerSocket;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every source is played by a server on this machine. */
class SourcesTests {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private final LocalSource server;
    private final Sources sources;

    SourcesTests() throws IOException {
        server = new LocalSource();
        sources = new Sources(server.settings(), CLOCK);
    }

    @AfterEach
    void close() {
        sources.close();
        server.close();
    }

    private Answer ask(ForecastSource source) throws InterruptedException {
        return sources.ask(source, Payload.QUAY, source == US_WEATHER_SERVICE ? "SEW/125,68" : null, Answer.Stamp.NONE);
    }

    private Answer.None none() throws InterruptedException {
        return (Answer.None) ask(MET_NORWAY);
    }

    /** Who waits no longer than that. */
    private Answer.None inASecond() throws InterruptedException {
        try (var hasty = new Sources(server.settings(Duration.ofSeconds(1)), CLOCK)) {
            return (Answer.None) hasty.ask(MET_NORWAY, Payload.QUAY, null, Answer.Stamp.NONE);
        }
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "UPLOAD")
    void a_whole_answer_is_read(ForecastSource source) throws InterruptedException {
        server.answers(200, Payload.of(source).text());

        var whole = (Answer.Whole) ask(source);

        assertThat(ForecastReader.of(source).read(whole.bytes(), Payload.QUAY))
                .isInstanceOf(ForecastReading.Read.class);
        assertThat(server.asked())
                .hasSize(1)
                .first()
                .satisfies(
                        asked -> assertThat(asked.header("User-Agent")).isEqualTo("Drylap tests (quay@example.org)"));
    }

    @Test
    void each_source_is_asked_in_its_own_way_and_with_four_decimals_at_most() throws InterruptedException {
        for (var source : ForecastSource.values()) if (source.fetched()) ask(source);

        assertThat(server.asked())
                .extracting(LocalSource.Asked::path)
                .satisfiesExactly(
                        us -> assertThat(us).isEqualTo("/gridpoints/SEW/125,68"),
                        meteo -> assertThat(meteo)
                                .startsWith("/v1/forecast?latitude=47.6062&longitude=-122.3321&hourly=temperature_2m,")
                                .contains("&timezone=GMT"),
                        norway -> assertThat(norway)
                                .isEqualTo("/weatherapi/locationforecast/2.0/complete?lat=47.6062&lon=-122.3321"),
                        csv -> assertThat(csv).isEqualTo("/files/quay.csv"));
    }

    @Test
    void the_grid_cell_of_a_place_is_asked_for_once() throws InterruptedException {
        server.answers(200, "{\"properties\":{\"gridId\":\"SEW\",\"gridX\":125,\"gridY\":68}}");

        sources.ask(US_WEATHER_SERVICE, Payload.QUAY, null, Answer.Stamp.NONE);
        sources.ask(US_WEATHER_SERVICE, Payload.QUAY, null, Answer.Stamp.NONE);

        assertThat(server.asked())
                .extracting(LocalSource.Asked::path)
                .containsExactly("/points/47.6062,-122.3321", "/gridpoints/SEW/125,68", "/gridpoints/SEW/125,68");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "nothing", "{\"properties\":{\"gridId\":\"../x\",\"gridX\":1,\"gridY\":1}}"})
    void a_place_without_a_grid_cell_is_said(String body) throws InterruptedException {
        server.answers(200, body);

        assertThat(sources.ask(US_WEATHER_SERVICE, Payload.QUAY, null, Answer.Stamp.NONE))
                .isEqualTo(new Answer.None("127.0.0.1 names no grid cell for this place", false, null));
        assertThat(server.asked()).hasSize(1);
    }

    @Test
    void only_what_is_newer_is_asked_for() throws InterruptedException {
        server.answers(
                200,
                "x",
                "ETag",
                "\"7\"",
                "Last-Modified",
                "Wed, 25 Nov 2026 11:04:26 GMT",
                "Expires",
                "Wed, 25 Nov 2026 12:34:00 GMT");
        var first = (Answer.Whole) ask(MET_NORWAY);
        server.answers(304, "", "Expires", "Wed, 25 Nov 2026 13:00:00 GMT");
        var second = (Answer.Unchanged) sources.ask(MET_NORWAY, Payload.QUAY, null, first.stamp());

        assertThat(first.stamp().expires()).isEqualTo("2026-11-25T12:34:00Z");
        assertThat(server.asked().getLast().header("If-None-Match")).isEqualTo("\"7\"");
        assertThat(server.asked().getLast().header("If-Modified-Since")).isEqualTo("Wed, 25 Nov 2026 11:04:26 GMT");
        assertThat(second.stamp())
                .isEqualTo(new Answer.Stamp(
                        "\"7\"", "Wed, 25 Nov 2026 11:04:26 GMT", Instant.parse("2026-11-25T13:00:00Z")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        403 | 127.0.0.1 refuses (403); see that the user agent in the settings names who asks | true
        404 | 127.0.0.1 knows no forecast for this place (404) | false
        400 | 127.0.0.1 answers with status 400 | false
        429 | 127.0.0.1 is asked too often (429) | true
        500 | 127.0.0.1 is out of order (500) | true
        503 | 127.0.0.1 is out of order (503) | true
        """)
    void a_refusal_says_why_and_is_not_tried_again_at_once(int status, String why, boolean asked)
            throws InterruptedException {
        server.answers(status, "no");

        assertThat(none()).isEqualTo(new Answer.None(why, asked, null));
        assertThat(server.asked()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        120                           | PT2M
        Wed, 25 Nov 2026 12:10:00 GMT | PT10M
        999999999                     | PT24H
        """)
    void a_wait_that_is_asked_for_is_told_in_seconds_or_as_a_time(String header, Duration wait)
            throws InterruptedException {
        server.answers(429, "", "Retry-After", header);

        assertThat(none().pause()).isEqualTo(wait);
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "-5", "Wed, 25 Nov 2026 11:00:00 GMT"})
    void a_wait_that_is_none_is_left_out(String header) throws InterruptedException {
        server.answers(503, "", "Retry-After", header);

        assertThat(none().pause()).isNull();
    }

    @Test
    void who_does_not_answer_is_not_waited_for() throws InterruptedException {
        server.answers(exchange -> sleep(Duration.ofSeconds(5)));

        long begin = System.nanoTime();
        assertThat(inASecond().why()).isIn("127.0.0.1 did not answer within 1 s", "127.0.0.1 did not answer in time");
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(Duration.ofSeconds(4));
    }

    @Test
    void who_answers_drop_by_drop_is_not_waited_for() throws InterruptedException {
        server.answers(exchange -> {
            exchange.sendResponseHeaders(200, 0);
            for (int i = 0; i < 50; i++) {
                exchange.getResponseBody().write(' ');
                exchange.getResponseBody().flush();
                sleep(Duration.ofMillis(100));
            }
        });

        assertThat(inASecond().why()).isEqualTo("127.0.0.1 did not answer within 1 s");
    }

    @Test
    void fifty_megabytes_are_not_taken() throws InterruptedException {
        long[] sent = new long[1];
        server.answers(exchange -> {
            exchange.sendResponseHeaders(200, 0);
            byte[] block = new byte[1 << 16];
            for (; sent[0] < 50_000_000; sent[0] += block.length)
                exchange.getResponseBody().write(block);
        });

        assertThat(none().why()).isEqualTo("127.0.0.1 sent more than 8 MiB, which is no forecast of one place");
        assertThat(sent[0]).isLessThan(40_000_000);
    }

    @Test
    void an_answer_that_breaks_off_is_said() throws InterruptedException {
        server.answers(exchange -> {
            exchange.sendResponseHeaders(200, 1000);
            exchange.getResponseBody().write(new byte[10]);
        });

        assertThat(none().why()).startsWith("the answer of 127.0.0.1 broke off");
    }

    @Test
    void who_cannot_be_reached_is_named() throws IOException, InterruptedException {
        int nobody;
        try (var port = new ServerSocket(0)) {
            nobody = port.getLocalPort();
        }
        try (var elsewhere = new Sources(at("http://127.0.0.1:" + nobody), CLOCK)) {
            assertThat(elsewhere.ask(OPEN_METEO, Payload.QUAY, null, Answer.Stamp.NONE))
                    .isEqualTo(new Answer.None("127.0.0.1 cannot be reached", false, null));
        }
    }

    @Test
    void an_address_that_is_blank_or_none_is_said() throws InterruptedException {
        try (var nowhere = new Sources(at(""), CLOCK);
                var nonsense = new Sources(at("not an address"), CLOCK)) {
            assertThat(nowhere.ask(CSV, Payload.QUAY, null, Answer.Stamp.NONE))
                    .isEqualTo(new Answer.None("no address is set for Forecast file of your own (CSV)", false, null));
            assertThat(nonsense.ask(OPEN_METEO, Payload.QUAY, null, Answer.Stamp.NONE))
                    .isEqualTo(new Answer.None(
                            "the address set for Open-Meteo, hourly is none (not an address)", false, null));
        }
    }

    private static ForecastSettings at(String base) {
        return new ForecastSettings("tests", base, base, base, base, Duration.ofSeconds(5), Duration.ofSeconds(20));
    }

    private static void sleep(Duration time) {
        try {
            Thread.sleep(time);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
