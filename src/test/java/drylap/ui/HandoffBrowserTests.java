package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;
import static drylap.persistence.jooq.Tables.HANDOFF_PHOTO;
import static drylap.persistence.jooq.Tables.PLAN;
import static drylap.persistence.jooq.Tables.PUBLICATION;
import static drylap.persistence.jooq.Tables.STEP_MARK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import drylap.assembly.Step;
import drylap.handoff.Custodies;
import drylap.handoff.Custody;
import drylap.handoff.ReturnReason;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.People;
import drylap.security.Person;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.env.Environment;
import org.springframework.test.context.TestPropertySource;

/**
 * The sample from a proposal to the accepted apron: the scheduler and the window crew on one node, the wrap crew on another one
 * that shares nothing with it but the database.
 */
@PageTest
@TestPropertySource(properties = {"drylap.demo=sample-data/harbour-week", "drylap.demo-people=allow"})
class HandoffBrowserTests {
    private static final int MOST_DAYS = 12;
    private static final byte[] PHOTO = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private Environment environment;

    @Autowired
    private People people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private OpeningStates states;

    @Autowired
    private StepLog log;

    @Autowired
    private Custodies custodies;

    @Autowired
    private DSLContext db;

    private FolderId folder = new FolderId(0);
    private OpeningId opening = new OpeningId("none");

    @Test
    void three_people_hand_an_opening_over_from_the_proposal_to_the_accepted_apron() {
        folder = folders.list().getFirst().id();
        try (var second = new SecondNode(environment);
                Page office = enter(port, "ines", 1440);
                Page phone = enter(port, "mara", 360);
                Page wrap = enter(second.port(), "sol", 1440)) {
            propose(office);
            publish(office);
            goTo(wrap, second.port(), "aprons");
            turnToAnOpeningNotBegun(phone);
            refuseOneOutOfOrder(phone);
            markAllInOrder(phone);
            look(wrap, second.port());
            finishTheCourse();
            release(phone);
            giveBack(wrap);
            repair(phone);
            release(phone);
            accept(wrap);
        }
    }

    private Page enter(int at, String name, int width) {
        Page page = chromium.page(width, 800, ColorScheme.LIGHT);
        SignInPage.at(at).enterAsSample(page, name);
        return page;
    }

    private void propose(Page office) {
        goTo(office, port, "week-sheet");
        var words = office.locator("plan-run .words");
        if (button(office, "Stop").isVisible()) button(office, "Stop").click();
        assertThat(words).hasText(Pattern.compile("Planned|Stopped.*"), patiently());
        int plans = db.fetchCount(PLAN);
        long published = published();
        office.locator(".plan-bar vaadin-select").click();
        office.getByRole(
                        AriaRole.OPTION,
                        new Page.GetByRoleOptions().setName("10 s").setExact(true))
                .click();
        button(office, "Plan again").click();
        assertThat(words).hasText("Planning");
        assertThat(words).hasText("Planned", patiently());
        assertThat(db.fetchCount(PLAN)).isGreaterThan(plans);
        assertThat(published()).as("a proposal binds nobody").isEqualTo(published);
    }

    private void publish(Page office) {
        long before = published();
        button(office, "Publish this proposal").click();
        assertThat(office.locator(".publish"))
                .containsText("by " + person("ines").name());
        long newest = db.fetchValue(db.select(PLAN.ID)
                .from(PLAN)
                .where(PLAN.FOLDER_ID.eq(folder.value()))
                .orderBy(PLAN.ID.desc())
                .limit(1));
        assertThat(published()).isNotEqualTo(before).isEqualTo(newest);
    }

    /** On the crew's own day, whichever day of the week it is: the first opening that nobody has touched. */
    private void turnToAnOpeningNotBegun(Page phone) {
        goTo(phone, port, "my-day");
        for (int day = 0; day < MOST_DAYS; day++) {
            for (var stop : phone.locator(".stop a").all()) {
                var id = new OpeningId(
                        stop.getAttribute("href").replaceAll(".*/", "").replace("%20", " "));
                if (!isNotBegun(id)) continue;
                opening = id;
                stop.click();
                assertThat(phone.locator("step-marker h1")).hasText(id.value());
                return;
            }
            String title = phone.locator(".my-day h1").textContent();
            button(phone, "Day after").click();
            assertThat(phone.locator(".my-day h1")).not().hasText(title);
        }
        throw new AssertionError("no opening of crew window-1 is left to begin");
    }

    private boolean isNotBegun(OpeningId id) {
        return states.of(person("mara"), folder, id).done().isEmpty()
                && course(id).stream().noneMatch(state -> state.opening().waterTest());
    }

    private void refuseOneOutOfOrder(Page phone) {
        assertThat(phone.locator("li.next").first()).isVisible();
        Locator later = phone.locator("li.later")
                .filter(new Locator.FilterOptions().setHasText("head flashing over"))
                .first();
        later.locator("button").click();
        assertThat(later.locator("small")).containsText("reverse lap");
        var lines = state().list().lines();
        var head = lines.stream()
                .filter(line -> line.steps().contains(Step.HEAD_FLASHING))
                .findFirst()
                .orElseThrow();
        Object answer = phone.evaluate(
                """
                async ({folder, opening, line}) => {
                  const me = await (await fetch('/api/me')).json();
                  const mark = {key: crypto.randomUUID(), folder, opening, line, kind: 'done', photoIds: [],
                      markedAt: new Date().toISOString()};
                  const answer = await fetch('/api/marks', {method: 'POST', body: JSON.stringify([mark]),
                      headers: {'Content-Type': 'application/json', [me.header]: me.token}});
                  return JSON.stringify(await answer.json());
                }""", Map.of("folder", (int) folder.value(), "opening", opening.value(), "line", head.code()));
        assertThat((String) answer).contains("\"outcome\":\"refused\"", "\"over\":", "<svg");
        assertThat(marks()).as("what is refused is not written down").isEmpty();
    }

    private void markAllInOrder(Page phone) {
        List<String> tapped = new ArrayList<>();
        while (phone.locator(".mark-it").isEnabled()) {
            tapped.add(phone.locator(".thumb .step").textContent());
            phone.locator(".mark-it").click();
            assertThat(phone.locator("li.done")).hasCount(tapped.size());
            assertThat(phone.locator(".thumb .step"))
                    .not()
                    .hasText(tapped.getLast()); // the next line's name comes a frame later
        }
        await().untilAsserted(() -> assertThat(marks()).containsExactlyElementsOf(tapped));
        assertThat(state().rating().mayBeLeft()).isTrue();
        assertThat(state().released()).isFalse();
    }

    private void look(Page wrap, int second) {
        goTo(wrap, second, "aprons?opening=" + opening.value());
        assertThat(wrap.locator(".apron-panel h2")).containsText(opening.value());
        assertThat(button(wrap, "Accept " + opening)).hasCount(0);
    }

    private void giveBack(Page wrap) {
        assertThat(button(wrap, "Accept " + opening)).isVisible();
        button(wrap, "Return " + opening).click();
        wrap.locator("vaadin-select.why").click();
        wrap.getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName(ReturnReason.APRON_SHORT.words()))
                .click();
        wrap.getByLabel("What is wrong, in your words").fill("apron cut 20 mm short");
        wrap.locator("vaadin-upload input[type=file]").setInputFiles(new FilePayload("apron.png", "image/png", PHOTO));
        assertThat(wrap.locator("vaadin-upload-file")).hasAttribute("complete", "");
        button(wrap, "Return " + opening).last().click();
        assertThat(wrap.locator(".notice")).containsText(opening + ": returned");
        assertThat(custodies.of(folder, opening)).isInstanceOfSatisfying(Custody.Returned.class, returned -> {
            assertThat(returned.by()).isEqualTo(person("sol").name());
            assertThat(returned.reason()).isEqualTo(ReturnReason.APRON_SHORT);
        });
        assertThat(db.fetchCount(HANDOFF_PHOTO)).isEqualTo(1);
        assertThat(state().released()).isFalse();
    }

    private void repair(Page phone) {
        int undone = marks().size();
        assertThat(phone.locator(".mark-it")).isEnabled();
        while (phone.locator(".mark-it").isEnabled()) {
            int done = phone.locator("li.done").count();
            phone.locator(".mark-it").click();
            assertThat(phone.locator("li.done")).hasCount(done + 1);
        }
        await().untilAsserted(() -> assertThat(state().rating().mayBeLeft()).isTrue());
        assertThat(marks()).hasSizeGreaterThan(undone);
    }

    private void accept(Page wrap) {
        button(wrap, "Accept " + opening).click();
        assertThat(wrap.locator(".notice")).containsText("accepted");
        assertThat(custodies.of(folder, opening))
                .isInstanceOfSatisfying(
                        Custody.Accepted.class,
                        accepted -> assertThat(accepted.by())
                                .isEqualTo(person("sol").name()));
        assertThat(acts()).containsExactly("released", "returned", "released", "accepted");
    }

    /** Other crews do the rest of the course meanwhile. */
    private void finishTheCourse() {
        for (var state : course(opening))
            state.list().lines().stream()
                    .filter(line -> line.number().isPresent() && !line.release())
                    .filter(line -> !state.done().contains(line.code()))
                    .map(line -> MarkRequest.done(
                            UUID.randomUUID(), folder, state.opening().id(), line.code(), Instant.now()))
                    .forEach(mark -> log.mark(person("teo"), mark));
    }

    /** The whole course where all of it is done, else what is left of it. */
    private void release(Page phone) {
        var waiting = course(opening);
        var button = phone.locator("release-offer button").last();
        assertThat(button)
                .hasText(
                        waiting.size() == 1
                                ? "Release " + opening
                                : "Release the course: "
                                        + waiting.stream()
                                                .map(state ->
                                                        state.opening().id().value())
                                                .collect(Collectors.joining(", ")));
        press(button, phone.locator("step-marker"));
        for (var state : waiting)
            assertThat(custodies.of(folder, state.opening().id())).isInstanceOf(Custody.Released.class);
        assertThat(state().released()).isTrue();
    }

    /** Others have marked the course meanwhile: who is told so before the page has seen it presses again. */
    private static void press(Locator button, Locator page) {
        String changed = "was changed since you looked at it";
        String released = "Released to the trade that follows";
        button.click();
        assertThat(page).containsText(Pattern.compile(changed + "|" + released));
        if (page.textContent().contains(changed)) button.click();
        assertThat(page).containsText(released);
    }

    /** What is not released of the opening's course. */
    private List<OpeningState> course(OpeningId id) {
        var who = person("mara");
        var here = states.of(who, folder, id).opening();
        return states.of(who, folder).stream()
                .filter(state -> state.opening().facade().equals(here.facade())
                        && state.opening().level() == here.level()
                        && !state.released())
                .toList();
    }

    private OpeningState state() {
        return states.of(person("mara"), folder, opening);
    }

    /** The texts of what was marked as done at the opening, in the order of the log. */
    private List<String> marks() {
        return db.selectFrom(STEP_MARK)
                .where(STEP_MARK.FOLDER_ID.eq(folder.value()), STEP_MARK.OPENING.eq(opening.value()))
                .orderBy(STEP_MARK.ID)
                .fetch(row -> state().list().line(row.getLine()).orElseThrow().text());
    }

    private List<String> acts() {
        return db.select(HANDOFF_ACT.KIND)
                .from(HANDOFF_ACT)
                .join(HANDOFF_ENTRY)
                .on(HANDOFF_ENTRY.ACT_ID.eq(HANDOFF_ACT.ID))
                .where(HANDOFF_ENTRY.FOLDER_ID.eq(folder.value()), HANDOFF_ENTRY.OPENING.eq(opening.value()))
                .orderBy(HANDOFF_ACT.ID)
                .fetch(HANDOFF_ACT.KIND);
    }

    private long published() {
        return db.select(PUBLICATION.PLAN_ID)
                .from(PUBLICATION)
                .where(PUBLICATION.FOLDER_ID.eq(folder.value()))
                .orderBy(PUBLICATION.ID.desc())
                .limit(1)
                .fetchSingle(PUBLICATION.PLAN_ID);
    }

    private Person person(String signInName) {
        return people.demo().stream()
                .filter(one -> one.signInName().equals(signInName))
                .findFirst()
                .orElseThrow();
    }

    private static void goTo(Page page, int at, String way) {
        page.navigate("http://localhost:%d/%s".formatted(at, way));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static LocatorAssertions.HasTextOptions patiently() {
        return new LocatorAssertions.HasTextOptions().setTimeout(90_000);
    }
}
