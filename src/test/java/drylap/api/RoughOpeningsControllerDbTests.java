package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.kernel.OpeningId;
import drylap.kernel.Reading;
import drylap.planning.JobFolders;
import drylap.progress.WallOfAll;
import drylap.roughopening.RoughOpenings;
import drylap.roughopening.RoughPlace;
import drylap.roughopening.RoughSizes;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.SpanishWords;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import tools.jackson.databind.json.JsonMapper;

@DbTest
class RoughOpeningsControllerDbTests {
    private static final JsonMapper JSON = JsonMapper.shared();
    private static final OpeningId ONE = WallOfAll.plain(Method.B);

    @Autowired
    JobFolders folders;

    @Autowired
    RoughOpenings rough;

    FolderId folder = new FolderId(0);

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
    }

    private MockHttpServletResponse ask(Person who, String address) throws Exception {
        SignedIn whoever = () -> Optional.of(who);
        return MockMvcBuilders.standaloneSetup(new RoughOpeningsController(rough, whoever))
                .setControllerAdvice(new Problems(whoever))
                .build()
                .perform(get(address))
                .andReturn()
                .getResponse();
    }

    private String address() {
        return "/api/rough-openings/%d/%s".formatted(folder.value(), ONE.value());
    }

    /** As designed but for the width at the head. */
    private RoughSizes narrowerBy(int millimetres) {
        var opening = rough.opening(WallOfAll.WINDOW, folder, ONE);
        Map<RoughPlace, BigDecimal> sizes = new EnumMap<>(RoughPlace.class);
        double diagonal = Math.hypot(opening.widthMm(), opening.heightMm());
        for (RoughPlace place : RoughPlace.values())
            sizes.put(
                    place,
                    BigDecimal.valueOf(
                            place.code().startsWith("width")
                                    ? opening.widthMm()
                                    : place.code().startsWith("height")
                                            ? opening.heightMm()
                                            : place.side() ? diagonal : 0));
        sizes.put(RoughPlace.WIDTH_HEAD, BigDecimal.valueOf(opening.widthMm() - millimetres));
        return new RoughSizes(sizes);
    }

    @Test
    void before_it_is_measured_only_the_right_is_told() throws Exception {
        assertThat(ask(WallOfAll.WINDOW, address()).getContentAsString()).isEqualTo("{\"mayMeasure\":true}");
        assertThat(ask(WallOfAll.TESTER, address()).getContentAsString()).isEqualTo("{\"mayMeasure\":false}");
    }

    @Test
    void the_newest_measurement_is_told_with_what_is_to_be_done() throws Exception {
        rough.record(WallOfAll.WINDOW, folder, ONE, UUID.randomUUID(), narrowerBy(12), "");
        assertThat(ask(WallOfAll.TESTER, address()).getContentAsString())
                .contains("\"grade\":\"report\"", "\"words\":\"does not fit\"", "Report it to the scheduler");
    }

    @Test
    void whoever_reads_spanish_is_answered_and_refused_in_spanish() throws Exception {
        rough.record(WallOfAll.WINDOW, folder, ONE, UUID.randomUUID(), narrowerBy(12), "");
        var spanish = Reading.USUAL.in(Language.SPANISH);
        var answer =
                JSON.readTree(ask(WallOfAll.TESTER.reading(spanish), address()).getContentAsByteArray());
        var refusal = JSON.readTree(
                ask(WallOfAll.ELSEWHERE.reading(spanish), address()).getContentAsByteArray());

        var words = new SpanishWords(List.of());
        assertThat(List.of(answer.path("words"), answer.path("meaning"), refusal.path("detail")))
                .allSatisfy(one -> assertThat(words.strange(one.stringValue())).isEmpty());
        assertThat(answer.path("words").stringValue()).isEqualTo("no cabe");
        assertThat(answer.path("meaning").stringValue()).contains("Avise al planificador");
        assertThat(answer.path("grade").stringValue()).isEqualTo("report");
        assertThat(refusal.path("detail").stringValue()).isEqualTo("Aquí no hay nada para usted.");
    }

    @Test
    void what_is_not_there_or_not_theirs_is_not_found() throws Exception {
        assertThat(ask(WallOfAll.ELSEWHERE, address()).getStatus()).isEqualTo(404);
        assertThat(ask(WallOfAll.WINDOW, "/api/rough-openings/x/" + ONE.value()).getStatus())
                .isEqualTo(404);
    }
}
