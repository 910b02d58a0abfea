package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import drylap.handoff.HandoffRequest;
import drylap.handoff.Releases;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What the server pushes to an open page, read frame by frame, and what the page fetches after it. */
@PageTest
class PushRightsBrowserTests {
    private static final OpeningId ONE = new OpeningId("QW1-01");
    private static final Reach QUAY = Reach.of(Set.of(new SiteId("Q")));
    private static final Reach MILL = Reach.of(Set.of(new SiteId("M")));
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
    private OpeningStates states;

    @Autowired
    private StepLog log;

    @Autowired
    private Releases releases;

    private FolderId folder = new FolderId(0);

    /** Someone with an open page, and all that was pushed to it and fetched by it. */
    private record Listener(Page page, List<String> frames, List<Response> weeks) {
        boolean heardOf(String what) {
            synchronized (frames) {
                return frames.stream().anyMatch(frame -> frame.contains(what))
                        || weeks.stream().anyMatch(week -> week.text().contains(what));
            }
        }
    }

    @Test
    void a_page_hears_at_once_of_its_own_sites_and_never_of_others() {
        publish();
        var crew = people.add(Role.WINDOW_CREW, QUAY, "W1");
        var theirs = listener(people.add(Role.FOLLOW_ON, QUAY, "P1"), "aprons");
        var others = List.of(
                listener(people.add(Role.FOLLOW_ON, MILL, "P1"), "aprons"),
                listener(people.add(Role.WINDOW_CREW, MILL, "W1"), "my-day"),
                listener(people.add(Role.SCHEDULER, MILL, null), "week-sheet"),
                listener(people.add(Role.SCHEDULER, MILL, null), "walls"),
                listener(people.add(Role.TESTER, MILL, "W1"), "records"),
                listener(people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null), "people"));

        finish(crew);
        release(crew);
        publish();

        await().untilAsserted(() -> {
            theirs.page().waitForTimeout(100);
            assertThat(theirs.heardOf(ONE.value())).isTrue();
        });
        // what goes to the others was sent before or with the last publication
        others.getFirst().page().waitForTimeout(1_500);
        assertThat(others.get(2).weeks()).isNotEmpty();
        for (var other : others) {
            assertThat(other.heardOf("QW1-01")).as(other.page().url()).isFalse();
            assertThat(other.heardOf("Quay Nine")).as(other.page().url()).isFalse();
            other.page().close();
        }
        theirs.page().close();
    }

    private Listener listener(Person who, String way) {
        Page page = chromium.page(1440, 800, ColorScheme.LIGHT);
        List<String> frames = Collections.synchronizedList(new ArrayList<>());
        page.onWebSocket(socket -> socket.onFrameReceived(frame -> {
            if (frame.text() != null) frames.add(frame.text());
        }));
        List<Response> weeks = new ArrayList<>();
        page.onResponse(answer -> {
            if (answer.url().endsWith("/week.json")) weeks.add(answer);
        });
        SignInPage.at(port).session(page, who);
        page.navigate("http://localhost:%d/%s".formatted(port, way));
        page.locator("main > *").first().waitFor();
        page.waitForTimeout(500);
        return new Listener(page, frames, weeks);
    }

    private void publish() {
        var quay = new QuayFolder().folder();
        if (folder.value() == 0) folder = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        var before = publications.latest(folder).map(one -> one.id()).orElse(null);
        publications.publish(people.scheduler(), folder, plans.save(folder, plan), before);
    }

    private void finish(Person crew) {
        var state = states.of(crew, folder, ONE);
        state.list().lines().stream()
                .filter(line -> line.number().isPresent() && !line.release())
                .filter(line -> !state.done().contains(line.code()))
                .forEach(line -> log.mark(
                        crew,
                        MarkRequest.done(
                                UUID.randomUUID(), folder, ONE, line.code(), Instant.parse("2026-04-13T19:00:00Z"))));
    }

    private void release(Person crew) {
        var seen = Map.of(ONE, states.of(crew, folder, ONE).version());
        assertThat(releases.release(crew, new HandoffRequest(UUID.randomUUID(), folder, seen, "", List.of()))
                        .done())
                .isTrue();
    }
}
