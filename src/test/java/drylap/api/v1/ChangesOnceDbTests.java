package drylap.api.v1;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.KEPT_ANSWER;
import static drylap.persistence.jooq.Tables.STEP_MARK;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.resends.KeptAnswers;
import drylap.ui.PageTest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** A change says what it was decided upon, and is done once however often it is sent. */
@PageTest
class ChangesOnceDbTests {
    private static final String RO = mark("RO");

    @LocalServerPort
    private int port;

    @Autowired
    private Programs programs;

    @Autowired
    private KeptAnswers answers;

    @Autowired
    private Clock clock;

    @Autowired
    private DSLContext db;

    private String path = "";
    private Program program = new Program("", new Document(Program.JSON.createObjectNode()), "", Set.of());

    @BeforeEach
    void a_folder_is_in_work() {
        path = "/api/v1/folders/%d/openings/QW2-01"
                .formatted(programs.published().value());
        program = programs.of("http://localhost:" + port, programs.people.scheduler());
    }

    private static String mark(String line) {
        return "{\"line\":\"%s\",\"kind\":\"done\",\"markedAt\":\"2026-04-13T19:00:00Z\"}".formatted(line);
    }

    private HttpResponse<String> read() {
        return program.raw(program.at(path).GET());
    }

    private String tag() {
        return read().headers().firstValue("ETag").orElseThrow();
    }

    private HttpResponse<String> send(String what, String body, @Nullable String tag, @Nullable String key) {
        var request = program.at(path + what).header("Content-Type", "application/json");
        if (tag != null) request.header("If-Match", tag);
        if (key != null) request.header("Idempotency-Key", key);
        return program.raw(request.POST(BodyPublishers.ofString(body)));
    }

    private int marks() {
        return db.fetchCount(STEP_MARK, STEP_MARK.FOLDER_ID.eq(Long.parseLong(path.split("/", -1)[4])));
    }

    private static String detail(HttpResponse<String> response) {
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        JsonNode problem = Program.JSON.readTree(response.body());
        assertThat(problem.path("status").asInt()).isEqualTo(response.statusCode());
        return problem.path("detail").asString();
    }

    @Test
    void a_change_that_does_not_say_what_it_was_decided_upon_is_refused() {
        for (String tag : new String[] {null, "*"}) {
            var refused = send("/marks", RO, tag, Programs.key());
            assertThat(refused.statusCode()).isEqualTo(428);
            assertThat(detail(refused)).contains("If-Match");
        }
        assertThat(marks()).isZero();
    }

    @Test
    void a_change_of_what_was_changed_meanwhile_is_refused_and_one_that_was_read_anew_is_taken() {
        String old = tag();
        assertThat(send("/marks", RO, old, Programs.key()).statusCode()).isEqualTo(200);

        var stale = send("/marks", mark("APR"), old, Programs.key());
        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(detail(stale)).contains("read it again");
        assertThat(send("/marks", mark("APR"), "W/" + tag(), Programs.key()).statusCode())
                .isEqualTo(412);
        assertThat(marks()).isEqualTo(1);
        assertThat(send("/marks", mark("APR"), tag(), Programs.key()).statusCode())
                .isEqualTo(200);
    }

    @Test
    void what_did_not_change_is_not_sent_again() {
        var again = program.raw(program.at(path).header("If-None-Match", tag()).GET());

        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
    }

    @Test
    void sent_again_with_its_key_a_change_is_answered_as_the_first_time_and_done_once() {
        String tag = tag();
        String key = Programs.key();
        var first = send("/marks", RO, tag, key);
        // what comes between does not change the first answer
        send("/marks", mark("APR"), first.headers().firstValue("ETag").orElseThrow(), Programs.key());

        var again = send("/marks", RO, tag, key);

        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(again.headers().firstValue("ETag")).isEqualTo(first.headers().firstValue("ETag"));
        assertThat(marks()).isEqualTo(2);
    }

    @Test
    void a_key_belongs_to_one_request_and_one_sender() {
        String tag = tag();
        String key = Programs.key();
        send("/marks", RO, tag, key);

        var other = send("/marks", mark("APR"), tag, key);
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(detail(other)).contains("another request");
        assertThat(send("/releases", RO, tag, key).statusCode()).isEqualTo(422);

        var before = program;
        program = new Program(
                before.address(), before.document(), programs.token(programs.people.scheduler()), before.used());
        assertThat(send("/marks", mark("APR"), tag(), key).statusCode()).isEqualTo(200);
    }

    @Test
    void a_refusal_is_answered_again_too_and_what_could_not_be_read_is_not_kept() {
        String tag = tag();
        String key = Programs.key();
        assertThat(send("/marks", "{", tag, key).statusCode()).isEqualTo(400);
        var refused = send("/marks", mark("JF"), tag, key);
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(detail(refused)).contains("reverse lap");
        send("/marks", RO, tag, Programs.key());

        var again = send("/marks", mark("JF"), tag, key);

        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.body()).isEqualTo(refused.body());
        assertThat(marks()).isEqualTo(1);
    }

    @Test
    void a_post_without_a_key_or_with_a_bad_one_is_refused() {
        for (String key : new String[] {null, "short", "with spaces in it"}) {
            var refused = send("/marks", RO, tag(), key);
            assertThat(refused.statusCode()).isEqualTo(400);
            assertThat(detail(refused)).contains("Idempotency-Key");
        }
    }

    @Test
    void of_many_at_once_with_one_key_one_is_done_and_all_are_answered_alike() throws Exception {
        String tag = tag();
        String key = Programs.key();
        Callable<HttpResponse<String>> sending = () -> send("/marks", RO, tag, key);
        List<HttpResponse<String>> all =
                atOnce(Stream.generate(() -> sending).limit(6).toList());

        assertThat(all).allSatisfy(one -> assertThat(one.statusCode()).isEqualTo(200));
        assertThat(all.stream().map(HttpResponse::body).collect(Collectors.toSet()))
                .hasSize(1);
        assertThat(marks()).isEqualTo(1);
    }

    @Test
    void of_many_at_once_decided_upon_the_same_state_one_is_done_and_the_others_are_too_late() throws Exception {
        String tag = tag();
        List<Callable<HttpResponse<String>>> sendings = Stream.<Callable<HttpResponse<String>>>generate(
                        () -> () -> send("/marks", RO, tag, Programs.key()))
                .limit(4)
                .toList();

        assertThat(atOnce(sendings).stream().map(HttpResponse::statusCode))
                .containsExactlyInAnyOrder(200, 412, 412, 412);
        assertThat(marks()).isEqualTo(1);
    }

    private static List<HttpResponse<String>> atOnce(List<Callable<HttpResponse<String>>> sendings) throws Exception {
        try (var threads = Executors.newFixedThreadPool(sendings.size())) {
            return threads.invokeAll(sendings).stream()
                    .map(one -> one.resultNow())
                    .toList();
        }
    }

    @Test
    void a_hand_over_that_is_refused_leaves_nothing_behind() {
        var refused = send("/releases", "{}", tag(), Programs.key());

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(Program.JSON.readTree(refused.body()).path("errors").toString())
                .contains("QW2-01");
        assertThat(db.fetchCount(HANDOFF_ACT, HANDOFF_ACT.FOLDER_ID.eq(Long.parseLong(path.split("/", -1)[4]))))
                .isZero();
        assertThat(marks()).isZero();
    }

    @Test
    void an_answer_is_kept_for_two_days_and_then_no_longer() {
        String key = Programs.key();
        send("/marks", RO, tag(), key);
        answers.run();
        assertThat(db.fetchExists(KEPT_ANSWER, KEPT_ANSWER.KEY.eq(key))).isTrue();

        db.update(KEPT_ANSWER)
                .set(KEPT_ANSWER.AT, clock.instant().minus(KeptAnswers.KEPT).minus(Duration.ofMinutes(1)))
                .where(KEPT_ANSWER.KEY.eq(key))
                .execute();
        answers.run();

        assertThat(db.fetchExists(KEPT_ANSWER, KEPT_ANSWER.KEY.eq(key))).isFalse();
    }
}
