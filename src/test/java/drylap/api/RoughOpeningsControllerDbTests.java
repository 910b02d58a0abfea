package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.progress.WallOfAll;
import drylap.roughopening.RoughOpenings;
import drylap.roughopening.RoughPlace;
import drylap.roughopening.RoughSizes;
import drylap.security.Person;
import drylap.security.SignedIn;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;

@DbTest
class RoughOpeningsControllerDbTests {
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
    void what_is_not_there_or_not_theirs_is_not_found() throws Exception {
        assertThat(ask(WallOfAll.ELSEWHERE, address()).getStatus()).isEqualTo(404);
        assertThat(ask(WallOfAll.WINDOW, "/api/rough-openings/x/" + ONE.value()).getStatus())
                .isEqualTo(404);
    }
}
