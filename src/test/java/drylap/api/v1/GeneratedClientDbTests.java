package drylap.api.v1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import client.v1.ApiClient;
import client.v1.ApiException;
import client.v1.ApiResponse;
import client.v1.DefaultApi;
import client.v1.model.Act;
import client.v1.model.Design;
import client.v1.model.Forecast;
import client.v1.model.HandsState;
import client.v1.model.MarkKind;
import client.v1.model.Me;
import client.v1.model.Method;
import client.v1.model.NewMark;
import client.v1.model.NewReturn;
import client.v1.model.Noted;
import client.v1.model.Opening;
import client.v1.model.OpeningLinesInner;
import client.v1.model.ReturnReason;
import client.v1.model.Trade;
import com.fasterxml.jackson.databind.DeserializationFeature;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.Role;
import drylap.ui.PageTest;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * The document as a generator of others reads it: every operation is used through the classes that OpenAPI Generator makes of it,
 * against the running application. A field that the document does not name is an error here.
 */
@PageTest
class GeneratedClientDbTests {
    private static final String OPENING = "QW2-01";

    @LocalServerPort
    private int port;

    @Autowired
    private Programs programs;

    private final Set<String> used = new TreeSet<>();
    private Document document = new Document(Program.JSON.createObjectNode());
    private DefaultApi office = new DefaultApi();
    private DefaultApi siding = office;
    private int folder;

    @BeforeEach
    void a_folder_is_in_work() {
        folder = Math.toIntExact(programs.published().value());
        String token = programs.token(programs.people.scheduler());
        document = Programs.document(address(), token);
        office = client(token);
        siding = client(programs.token(programs.people.add(Role.FOLLOW_ON, Reach.of(Set.of(new SiteId("Q"))), "P1")));
    }

    private String address() {
        return "http://localhost:" + port;
    }

    private DefaultApi client(String token) {
        var mapper = ApiClient.createDefaultObjectMapper()
                .configure(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES, true);
        return new DefaultApi(new ApiClient(ApiClient.createDefaultHttpClientBuilder(), mapper, address())
                .setRequestInterceptor(request -> request.header("Authorization", "Bearer " + token))
                .setResponseInterceptor(this::note));
    }

    /** What was asked for, and answered well, is an operation of the document. */
    private void note(HttpResponse<?> response) {
        if (response.statusCode() / 100 != 2) return;
        String path = response.request().uri().getRawPath();
        for (String id : document.ids()) {
            var operation = document.operation(id);
            if (operation.method().equals(response.request().method())
                    && path.matches(operation.path().replaceAll("\\{\\w+}", "[^/]+"))) used.add(id);
        }
    }

    @Test
    void every_operation_of_the_document_is_used_by_a_client_that_was_generated_from_it() throws ApiException {
        readWhatIsDesigned();
        workAtTheOpening();
        handItOver();
        bringAForecast();
        addAndChangeAnOpening();

        assertThat(used).isEqualTo(document.ids());
    }

    private void readWhatIsDesigned() throws ApiException {
        assertThat(office.readDocument().toString()).contains("openapi=3.1");
        Me me = siding.readMe();
        assertThat(me.getRole()).isEqualTo(Me.RoleEnum.FOLLOW_ON);
        assertThat(me.getMay()).contains("accept").doesNotContain("release");
        assertThat(office.listFolders(null, null).getItems()).isNotEmpty();
        assertThat(office.listSites(folder, 1, null).getItems()).hasSize(1);
        assertThat(office.listSites(folder, 1, office.listSites(folder, 1, null).getNext())
                        .getItems())
                .singleElement()
                .satisfies(site -> {
                    assertThat(site.getName()).isEqualTo("Quay Nine");
                    assertThat(site.getAddress()).containsExactly("1 Invented Quay", "Sample Harbour");
                });
        assertThat(siding.listFacades(folder, null, null).getItems())
                .singleElement()
                .satisfies(wall -> {
                    assertThat(wall.getAzimuthDeg().intValue()).isEqualTo(262);
                    assertThat(wall.getHandoverDue()).isEqualTo(LocalDate.of(2026, 4, 17));
                });
        assertThat(office.listCrews(folder, null, null).getItems())
                .anyMatch(crew ->
                        crew.getTrade() == Trade.WRAP && crew.getCrew().equals("P1") && crew.getPeople() == null)
                .anyMatch(crew ->
                        crew.getCrew().equals("W1") && Integer.valueOf(3).equals(crew.getPeople()));
        assertThat(office.listOpenings(folder, "Q", null, null).getItems()).hasSize(3);
        assertThat(office.readPublication(folder).getBy()).isEqualTo("the sample");
        assertThat(office.listVisits(folder, null, null, null, null).getItems())
                .allMatch(visit -> visit.getStart().isBefore(visit.getEnd()));
    }

    private ApiResponse<Opening> read(DefaultApi who) throws ApiException {
        return who.readOpeningWithHttpInfo(folder, OPENING);
    }

    private static String tag(ApiResponse<?> response) {
        return Objects.requireNonNull(response.getHeaders().get("etag")).getFirst();
    }

    private void workAtTheOpening() throws ApiException {
        var seen = read(office);
        while (!seen.getData().getReleasable()) {
            var mark = new NewMark()
                    .line(next(seen.getData()))
                    .kind(MarkKind.DONE)
                    .markedAt(OffsetDateTime.parse("2026-04-13T19:00:00Z"));
            seen = office.markLineWithHttpInfo(folder, OPENING, tag(seen), Programs.key(), mark);
        }
        assertThat(office.listMarks(folder, OPENING, null, null).getItems())
                .isNotEmpty()
                .allMatch(mark -> mark.getMarkedAt().isEqual(OffsetDateTime.parse("2026-04-13T19:00:00Z")));
    }

    private static String next(Opening opening) {
        return opening.getLines().stream()
                .filter(line -> line.getNext() && line.getTrade() == Trade.WINDOW)
                .map(OpeningLinesInner::getLine)
                .findFirst()
                .orElseThrow();
    }

    private void handItOver() throws ApiException {
        var released = office.releaseOpening(
                folder, OPENING, tag(read(office)), Programs.key(), new Noted().note("by a program"));
        assertThat(released.getHands().getState()).isEqualTo(HandsState.RELEASED);
        var accepted = siding.acceptOpening(folder, OPENING, tag(read(siding)), Programs.key(), new Noted());
        assertThat(accepted.getHands().getState()).isEqualTo(HandsState.ACCEPTED);
        var returned = siding.returnOpening(
                folder, OPENING, tag(read(siding)), Programs.key(), new NewReturn().reason(ReturnReason.NOT_CLEAN));
        assertThat(returned.getHands().getState()).isEqualTo(HandsState.RETURNED);
        Act last = siding.listActs(folder, null, null).getItems().getLast();
        assertThat(siding.readAct(last.getAct()).getReason()).isEqualTo(ReturnReason.NOT_CLEAN);
    }

    private void bringAForecast() throws ApiException {
        String file = """
                hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity
                2026-04-13T07:00-07:00,0,0.1,2,4,80,12,70
                2026-04-13T08:00-07:00,1.5,0.9,2,4,80,12,90
                """;
        var before = office.readForecastWithHttpInfo("Q");

        Forecast after = office.putForecast("Q", tag(before), file, null);

        assertThat(after.getSource()).isEqualTo(Forecast.SourceEnum.UPLOAD);
        assertThat(after.getNewest().getUntil()).isEqualTo(OffsetDateTime.parse("2026-04-13T16:00:00Z"));
    }

    private void addAndChangeAnOpening() throws ApiException {
        Design design = new Design()
                .site("Q")
                .facade("west")
                .level(2)
                .widthMm(900)
                .heightMm(1200)
                .frame(Design.FrameEnum.VINYL)
                .method(Method.A)
                .approach(Design.ApproachEnum.DRAINAGE)
                .secondLayer(Design.SecondLayerEnum.NONE)
                .deliveredOn(LocalDate.of(2026, 4, 10))
                .waterTest(false)
                .priority(0);

        var added = office.putOpeningWithHttpInfo(folder, "QW2 new", design, null, "*", null);
        var changed = office.putOpening(folder, "QW2 new", design.widthMm(1000), tag(added), null, null);

        assertThat(added.getStatusCode()).isEqualTo(201);
        assertThat(changed.getDesign().getWidthMm()).isEqualTo(1000);
    }

    @Test
    void a_refusal_reaches_the_client_as_a_problem_with_its_status() {
        assertThatThrownBy(() -> office.markLine(
                        folder,
                        OPENING,
                        "\"old\"",
                        Programs.key(),
                        new NewMark()
                                .line("set")
                                .kind(MarkKind.DONE)
                                .markedAt(OffsetDateTime.parse("2026-04-13T19:00:00Z"))))
                .isInstanceOfSatisfying(ApiException.class, refused -> {
                    assertThat(refused.getCode()).isEqualTo(412);
                    assertThat(refused.getResponseBody()).contains("\"status\":412");
                });
        assertThat(used).isEmpty();
    }
}
