package drylap.ui;

import com.microsoft.playwright.JSHandle;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drylap.Drylap;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.platform.TestDatabase;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Person;
import drylap.security.TestPeople;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Measures how long a mark that is made at one node takes to show on a page that is open at another one: from before the
 * mark's transaction to the change on the page. Prints each in milliseconds.
 */
public final class NewsDelay {
    private static final OpeningId ONE = new OpeningId("MS1-01");
    private static final String CHANGE = """
            () => { window.changed = new Promise(done => new MutationObserver((_, me) => {
              me.disconnect();
              requestAnimationFrame(() => done(Date.now()));
            }).observe(document.querySelector('.handover'), {subtree: true, childList: true, characterData: true})); }""";

    private NewsDelay() {}

    public static void main(String[] args) {
        var node = new SpringApplicationBuilder(Drylap.class)
                .run(
                        "--server.port=0",
                        "--drylap.demo=",
                        "--vaadin.productionMode=true",
                        "--drylap.db.user=postgres",
                        "--drylap.db.url=" + TestDatabase.fresh());
        try (var second = new SecondNode(node.getEnvironment())) {
            measure(node, second);
        }
        node.close();
        System.exit(0);
    }

    private static void measure(ConfigurableApplicationContext node, SecondNode second) {
        Person scheduler = node.getBean(TestPeople.class).scheduler();
        FolderId folder = published(node);
        Page page = Chromium.shared().page(1440, 900, ColorScheme.LIGHT);
        SignInPage.at(second.port()).enter(page, scheduler);
        page.navigate("http://localhost:%d/walls?opening=%s".formatted(second.port(), ONE));
        page.locator(".handover-panel").waitFor();
        page.waitForTimeout(2_000);
        List<Long> delays = new ArrayList<>();
        for (var line : lines(node, scheduler, folder)) {
            page.evaluate(CHANGE);
            long before = System.currentTimeMillis();
            node.getBean(StepLog.class)
                    .mark(scheduler, MarkRequest.done(UUID.randomUUID(), folder, ONE, line.code(), Instant.now()));
            JSHandle shown = page.evaluateHandle("() => window.changed");
            delays.add(((Number) shown.jsonValue()).longValue() - before);
            page.waitForTimeout(300);
        }
        System.out.println("from a mark at one node to the page at the other, ms: " + delays);
        page.close();
    }

    private static List<WorkLine> lines(ConfigurableApplicationContext node, Person who, FolderId folder) {
        return node.getBean(OpeningStates.class).of(who, folder, ONE).list().lines().stream()
                .filter(line -> line.number().isPresent() && !line.release())
                .toList();
    }

    private static FolderId published(ConfigurableApplicationContext node) {
        var quay = new QuayFolder().folder();
        var id = node.getBean(JobFolders.class).save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        node.getBean(Publications.class)
                .publishSample(id, node.getBean(Plans.class).save(id, plan));
        return id;
    }
}
