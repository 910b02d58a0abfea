package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIRequestContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drylap.handoff.HandoffRecords;
import drylap.handoff.HandoffRequest;
import drylap.handoff.HoldPoint;
import drylap.handoff.Inspections;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.progress.OpeningStates;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Who gets which paper, asked with sessions of the real server: its door stands before the papers' own questions. */
@PageTest
class PaperRightsBrowserTests {
    private static final List<String> WHO =
            List.of("scheduler", "window crew", "follow-on", "administrator", "not signed in");

    private static final String AGREED = """
            week     x . . . .
            crew-day x x . . .
            release  x . x . .
            record   x x x . .
            take-off x . . . .
            """;

    private static final OpeningId ONE = new OpeningId("QW2-01");
    private static final Reach QUAY = Reach.of(Set.of(new SiteId("Q")));

    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private Inspections inspections;

    @Autowired
    private HandoffRecords records;

    @Autowired
    private OpeningStates states;

    @Test
    void each_paper_is_for_those_who_may_have_it_and_for_nobody_else() {
        var addresses = addresses();
        List<List<String>> columns =
                WHO.stream().map(who -> column(who, addresses)).toList();

        String found = AGREED.lines()
                .map(line -> line.substring(0, 8))
                .map(name -> "%s %s\n"
                        .formatted(
                                name,
                                columns.stream()
                                        .map(column -> column.contains(name.strip()) ? "x" : ".")
                                        .collect(Collectors.joining(" "))))
                .collect(Collectors.joining());
        assertThat(found).isEqualTo(AGREED);
    }

    /** The papers that one gets. */
    private List<String> column(String who, Map<String, String> addresses) {
        Page page = chromium.page(360, 740, ColorScheme.LIGHT);
        var person = person(who);
        if (person != null) SignInPage.at(port).session(page, person);
        var api = page.context().request();
        var got = addresses.entrySet().stream()
                .filter(one -> isPaper(api, one.getValue()))
                .map(Map.Entry::getKey)
                .toList();
        page.close();
        return got;
    }

    /** Whoever is not signed in is shown the way to sign in, which is a page. */
    private boolean isPaper(APIRequestContext api, String address) {
        var answer = api.get("http://localhost:%d/papers/%s".formatted(port, address));
        return answer.ok()
                && "application/pdf".equals(answer.headers().get("content-type"))
                && new String(answer.body(), 0, 5, java.nio.charset.StandardCharsets.US_ASCII).equals("%PDF-");
    }

    private Map<String, String> addresses() {
        var quay = new QuayFolder().folder();
        FolderId folder = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publishSample(folder, plans.save(folder, plan));
        Visit visit = plan.visits().stream()
                .filter(one -> one.crew().value().equals("W1"))
                .findFirst()
                .orElseThrow();
        var course = quay.openings().stream()
                .filter(one -> one.id().equals(ONE))
                .findFirst()
                .orElseThrow()
                .course();
        return Map.of(
                "week",
                "week.pdf?folder=%d&published=true&paper=a3".formatted(folder.value()),
                "take-off",
                "take-off.pdf?folder=%d&published=true&site=Q&paper=a4".formatted(folder.value()),
                "crew-day",
                "crew-day.pdf?crew=W1&date=%s&paper=a4".formatted(visit.date()),
                "release",
                "release.pdf?site=Q&facade=%s&level=%d&paper=a4"
                        .formatted(course.facade().facade(), course.level()),
                "record",
                "record.pdf?id=%d&paper=letter".formatted(record(folder)));
    }

    private long record(FolderId folder) {
        var who = people.scheduler();
        var seen = Map.of(ONE, states.of(who, folder, ONE).version());
        inspections.decide(
                who, new HandoffRequest(UUID.randomUUID(), folder, seen, "", List.of()), HoldPoint.MOCK_UP, true);
        return records.of(who, folder, 1).getFirst().id();
    }

    private @Nullable Person person(String who) {
        return switch (who) {
            case "scheduler" -> people.scheduler();
            case "window crew" -> people.add(Role.WINDOW_CREW, QUAY, "W1");
            case "follow-on" -> people.add(Role.FOLLOW_ON, QUAY, "P1");
            case "administrator" -> people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null);
            default -> null;
        };
    }
}
