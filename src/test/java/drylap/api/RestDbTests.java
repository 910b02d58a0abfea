package drylap.api;

import static drylap.persistence.jooq.Tables.STEP_MARK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.pictures.SamplePictures;
import drylap.planning.JobFolders;
import drylap.progress.OpeningStates;
import drylap.progress.Photos;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.SpanishWords;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The controllers over the real services and tables; who may come in at all is the filter chain's. */
@DbTest
class RestDbTests {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final byte[] PNG = SamplePictures.drawn("png", 4, 3);
    private static final String B = WallOfAll.plain(Method.B).value();

    @Autowired
    JobFolders folders;

    @Autowired
    StepLog log;

    @Autowired
    Photos photos;

    @Autowired
    OpeningStates states;

    @Autowired
    DSLContext db;

    FolderId folder = new FolderId(0);
    Person person = WallOfAll.WINDOW;

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
        person = WallOfAll.WINDOW;
    }

    private MockHttpServletResponse ask(RequestBuilder request) throws Exception {
        SignedIn whoever = () -> Optional.of(person);
        MockMvc mvc = MockMvcBuilders.standaloneSetup(
                        new MarksController(log, whoever),
                        new PhotosController(photos, whoever),
                        new OpeningsController(states, log, whoever))
                .setControllerAdvice(new Problems(whoever))
                .build();
        return mvc.perform(request).andReturn().getResponse();
    }

    private MockHttpServletResponse send(String json) throws Exception {
        return ask(post("/api/marks").contentType(MediaType.APPLICATION_JSON).content(json));
    }

    private static JsonNode json(MockHttpServletResponse response) throws Exception {
        return JSON.readTree(response.getContentAsByteArray());
    }

    private String mark(String line) {
        return "{\"key\":\"%s\",\"folder\":%d,\"opening\":\"%s\",\"line\":\"%s\",\"kind\":\"done\",\"markedAt\":\"2026-04-13T19:00:00Z\"}"
                .formatted(UUID.randomUUID(), folder.value(), B, line);
    }

    private String batch(String... lines) {
        return Arrays.stream(lines).map(this::mark).collect(Collectors.joining(",", "[", "]"));
    }

    private static List<String> outcomes(JsonNode answers) {
        return answers.valueStream()
                .map(answer -> answer.path("outcome").stringValue())
                .toList();
    }

    @Test
    void a_batch_is_answered_mark_by_mark_and_a_second_sending_adds_nothing() throws Exception {
        String batch = batch("RO", "APR");

        assertThat(outcomes(json(send(batch)))).containsExactly("marked", "marked");
        assertThat(outcomes(json(send(batch)))).containsExactly("already", "already");
        assertThat(db.fetchCount(STEP_MARK, STEP_MARK.FOLDER_ID.eq(folder.value())))
                .isEqualTo(2);
    }

    @Test
    void a_refused_mark_brings_the_lap_its_words_its_drawing_and_what_comes_first() throws Exception {
        var refused = json(send(batch("RO", "JF"))).get(1);

        assertThat(refused.path("outcome").stringValue()).isEqualTo("refused");
        assertThat(refused.path("words").stringValue()).contains("reverse lap");
        assertThat(refused.at("/lap/over").stringValue()).isEqualTo("JF");
        assertThat(refused.at("/lap/under").stringValue()).isEqualTo("APR");
        assertThat(refused.path("svg").stringValue()).startsWith("<svg");
        assertThat(refused.path("lines").toString()).isEqualTo("[\"APR\",\"PAN\"]");
    }

    @Test
    void whoever_reads_spanish_is_answered_in_spanish() throws Exception {
        person = WallOfAll.WINDOW.reading(Reading.USUAL.in(Language.SPANISH));
        var words = new SpanishWords(List.of(B, "north"));

        var answers = List.of(
                json(send(batch("RO", "JF"))),
                json(ask(get("/api/openings/{folder}/{opening}", folder.value(), B))),
                json(ask(get("/api/openings/{folder}/{opening}", folder.value(), "nowhere"))),
                json(photo(UUID.randomUUID(), "<svg/>".getBytes(StandardCharsets.UTF_8))),
                json(photo(UUID.randomUUID(), Arrays.copyOf(PNG, PNG.length - 14))),
                json(photo(UUID.randomUUID(), new byte[Photos.MOST_BYTES + 1])),
                json(send("{}")));

        for (String name :
                List.of("words", "text", "why", "source", "apron", "drainsTo", "detail", "weaknesses", "missingLaps"))
            assertThat(answers)
                    .flatMap(answer -> answer.findValues(name))
                    .allSatisfy(said -> assertThat(
                                    said.isArray() ? said.valueStream().toList() : List.of(said))
                            .allSatisfy(one ->
                                    assertThat(words.strange(one.stringValue())).isEmpty()));
        assertThat(answers.getFirst().toString()).contains("traslape invertido");
        assertThat(answers.toString()).contains("empieza como PNG", "está cortado", "se acepta: hasta 8 MB");
        assertThat(answers.getLast().toString()).contains("no se hizo nada de ella");
    }

    @Test
    void every_bad_field_of_a_batch_is_named_and_nothing_of_it_is_done() throws Exception {
        String bad =
                "{\"key\":\"1\",\"folder\":\"x\",\"line\":7,\"kind\":\"maybe\",\"markedAt\":\"noon\",\"photoIds\":[3]}";

        var response = send("[%s,%s]".formatted(mark("RO"), bad));

        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(response.getContentType()).startsWith("application/problem+json");
        assertThat(json(response)
                        .path("errors")
                        .valueStream()
                        .map(e -> e.path("field").stringValue()))
                .containsExactlyInAnyOrder(
                        "marks[1].key",
                        "marks[1].folder",
                        "marks[1].opening",
                        "marks[1].line",
                        "marks[1].kind",
                        "marks[1].markedAt",
                        "marks[1].photoIds[0]");
        assertThat(db.fetchCount(STEP_MARK, STEP_MARK.FOLDER_ID.eq(folder.value())))
                .isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "kind":"undone"                 | marks[0].reason | needs one
            "reason":"torn"                 | marks[0].reason | needs one
            "markedAt":"1999-12-31T00:00:00Z" | marks[0].markedAt | 2000 to 2099
            "note":5                        | marks[0].note   | no text
            "folder":1.5                    | marks[0].folder | whole number
            "opening":"  "                  | marks[0].opening | 1 to 100
            "opening":null                  | marks[0].opening | 1 to 100
            """)
    void a_bad_field_says_what_would_be_accepted(String field, String where, String accepted) throws Exception {
        String name = field.substring(0, field.indexOf(':'));
        String good = mark("RO").replaceFirst(name + ":(\"[^\"]*\"|\\d+),?", "").replaceFirst(",}$", "}");

        var errors = json(send("[" + good.replaceFirst("\\{", "{" + field + ",") + "]"))
                .path("errors");

        assertThat(errors).hasSize(1);
        assertThat(errors.get(0).path("field").stringValue()).isEqualTo(where);
        assertThat(errors.get(0).path("problem").stringValue()).contains(accepted);
    }

    @Test
    void a_text_with_a_zero_in_it_is_named_and_nothing_of_its_batch_is_done() throws Exception {
        String note = mark("RO").replaceFirst("\\{", "{\"note\":\"wet\\\\u0000sill\",");
        String opening = mark("RO").replace(B, B + "\\u0000");

        var response = send("[%s,%s]".formatted(note, opening));

        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(json(response).at("/errors/0/field").stringValue()).isEqualTo("marks[0].note");
        assertThat(json(response).at("/errors/0/problem").stringValue()).contains("U+0000");
        assertThat(json(response).at("/errors/1/field").stringValue()).isEqualTo("marks[1].opening");
    }

    @Test
    void a_note_of_2000_characters_is_taken_and_one_more_is_not() throws Exception {
        assertThat(outcomes(json(send("[" + noted(2000) + "]")))).containsExactly("marked");
        assertThat(json(send("[" + noted(2001) + "]")).at("/errors/0/problem").stringValue())
                .contains("up to 2000");
    }

    private String noted(int length) {
        return mark("RO").replaceFirst("\\{", "{\"note\":\"" + "x".repeat(length) + "\",");
    }

    @Test
    void a_batch_has_at_most_200_marks() throws Exception {
        String many = IntStream.range(0, 201).mapToObj(_ -> mark("RO")).collect(Collectors.joining(",", "[", "]"));

        assertThat(json(send(many)).at("/errors/0/problem").stringValue()).contains("accepted: up to 200");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"not json", "{}", "7", "[7]"})
    void what_is_no_list_of_marks_is_a_problem(String body) throws Exception {
        var response = send(body);

        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(response.getContentType()).startsWith("application/problem+json");
    }

    @Test
    void a_mark_at_a_site_that_is_not_ones_own_is_refused_like_one_at_no_opening() throws Exception {
        person = WallOfAll.ELSEWHERE;

        var answers = json(send("[%s,%s]".formatted(mark("RO"), mark("RO").replace(B, "nowhere"))));

        assertThat(outcomes(answers)).containsExactly("refused", "refused");
        assertThat(answers.get(0).path("words")).isEqualTo(answers.get(1).path("words"));
    }

    @Test
    void an_opening_is_shown_with_its_lines_and_why_each_may_not_be_marked() throws Exception {
        send(batch("RO", "APR"));

        var opening = json(ask(get("/api/openings/{folder}/{opening}", folder.value(), B)));

        assertThat(opening.at("/rating/code").stringValue()).isEqualTo("R0");
        assertThat(opening.at("/rating/words").stringValue()).startsWith("open to rain");
        var lines = opening.path("lines").valueStream().toList();
        assertThat(lines.get(1).path("done").booleanValue()).isTrue();
        assertThat(lines.get(1).path("by").stringValue()).isEqualTo("Window");
        assertThat(lines.get(2).path("next").booleanValue()).isTrue();
        assertThat(lines.get(2).has("why")).isFalse();
        assertThat(lines.get(3).path("why").stringValue()).contains("reverse lap");
        assertThat(opening.at("/sun/0/layer").stringValue()).isEqualTo("apron");
        assertThat(opening.path("svg").stringValue()).startsWith("<svg");
    }

    @Test
    void an_opening_of_another_site_and_none_at_all_are_not_found_alike() throws Exception {
        person = WallOfAll.ELSEWHERE;

        var foreign = ask(get("/api/openings/{folder}/{opening}", folder.value(), B));
        var none = ask(get("/api/openings/{folder}/{opening}", folder.value(), "nowhere"));

        assertThat(foreign.getStatus()).isEqualTo(404);
        assertThat(foreign.getContentAsString().replace(B, "nowhere")).isEqualTo(none.getContentAsString());
    }

    private MockHttpServletResponse photo(UUID key, byte[] content) throws Exception {
        return ask(multipart("/api/photos")
                .file(new MockMultipartFile("file", "evil.html", "text/html", content))
                .param("key", key.toString())
                .param("folder", String.valueOf(folder.value()))
                .param("opening", B)
                .param("takenAt", "2026-04-13T19:00:00Z"));
    }

    @Test
    void a_photo_is_stored_once_and_given_back_by_what_it_is_and_not_by_what_it_was_called() throws Exception {
        var key = UUID.randomUUID();

        assertThat(photo(key, PNG).getStatus()).isEqualTo(201);
        assertThat(photo(key, PNG).getStatus()).isEqualTo(200);
        assertThat(photo(key, Arrays.copyOf(PNG, PNG.length + 1)).getStatus()).isEqualTo(409);

        var given = ask(get("/api/photos/" + key));
        assertThat(given.getContentAsByteArray()).isEqualTo(PNG);
        assertThat(given.getHeader("Content-Disposition"))
                .isEqualTo("inline; filename=\"photo-%s.png\"".formatted(key));
        assertThat(given.getHeader("Content-Security-Policy")).contains("sandbox");
        assertThat(ask(get("/api/photos/%s/thumbnail".formatted(key))).getContentType())
                .isEqualTo("image/jpeg");
        assertThat(given.getContentType()).isEqualTo("image/png");
        assertThat(given.getHeader("Cache-Control")).isEqualTo("private");
        assertThat(given.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
    }

    @Test
    void a_photo_that_is_none_or_too_large_or_without_its_fields_is_a_problem() throws Exception {
        assertThat(photo(UUID.randomUUID(), "<html>".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
                        .getStatus())
                .isEqualTo(415);
        assertThat(photo(UUID.randomUUID(), Arrays.copyOf(PNG, Photos.MOST_BYTES + 1))
                        .getStatus())
                .isEqualTo(413);
        var without = ask(multipart("/api/photos").file(new MockMultipartFile("file", PNG)));
        assertThat(json(without)
                        .path("errors")
                        .valueStream()
                        .map(e -> e.path("field").stringValue()))
                .containsExactly("photo.key", "photo.folder", "photo.opening", "photo.takenAt");
        assertThat(json(ask(multipart("/api/photos"))).at("/errors/0/field").stringValue())
                .isEqualTo("photo.file");
    }

    @ParameterizedTest
    @CsvSource({"ELSEWHERE", "ADMINISTRATOR"})
    void whoever_may_not_see_a_photo_cannot_tell_it_from_none(String who) throws Exception {
        var key = UUID.randomUUID();
        photo(key, PNG);
        person = who.equals("ELSEWHERE") ? WallOfAll.ELSEWHERE : WallOfAll.ADMINISTRATOR;

        assertThat(ask(get("/api/photos/%s/thumbnail".formatted(key))).getStatus())
                .isEqualTo(404);
        var hidden = ask(get("/api/photos/" + key));
        var none = ask(get("/api/photos/" + new UUID(1, 2)));

        assertThat(hidden.getStatus()).isEqualTo(404);
        assertThat(hidden.getContentAsString().replace(key.toString(), ""))
                .isEqualTo(none.getContentAsString().replace(new UUID(1, 2).toString(), ""));
        assertThat(ask(get("/api/photos/no-number")).getStatus()).isEqualTo(404);
    }
}
