package drylap.ui;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drylap.Drylap;
import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
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
import drylap.sites.Opening;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Measures how long the week sheet of a folder takes to open, first alone in the database, then beside nine more of its size
 * with plans, publications and marks of their own: {@code WeekSheetOpening [OPENINGS]}. Prints the medians of seven openings.
 */
public final class WeekSheetOpening {
    private static final int ROUNDS = 7;
    private static final int FOLDERS = 10;
    /** One opening in ten has its window crew's lines marked. */
    private static final int MARKED = 10;

    private static final String FIRST_BLOCK = """
            () => new Promise(done => {
              const look = () => document.querySelector('week-sheet')?.shadowRoot?.querySelector('.block')
                  ? requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now())))
                  : setTimeout(look, 5);
              look();
            })""";
    /** What the browser waited for answers of the server while the page opened, and how much came. */
    private static final String ANSWERS = """
            () => [performance.getEntriesByType('navigation')[0], ...performance.getEntriesByType('resource')
                .filter(one => one.name.includes('v-r='))]
                .map(one => [one.responseEnd - one.requestStart, one.decodedBodySize])""";

    private final ConfigurableApplicationContext node;
    private final JobFolder folder;
    private final Plan plan;
    private final Person scheduler;

    private record Opened(double server, double painted, double bytes) {}

    private WeekSheetOpening(int openings) {
        node = new SpringApplicationBuilder(Drylap.class)
                .run(
                        "--server.port=0",
                        "--drylap.demo=",
                        "--vaadin.productionMode=true",
                        "--drylap.db.user=postgres",
                        "--drylap.db.url=" + TestDatabase.fresh());
        folder = GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), 1);
        plan = Planner.standard().plan(folder, new PlanRequest(null, null, 2_000L, 1), _ -> {}, () -> false);
        scheduler = node.getBean(TestPeople.class).scheduler();
    }

    public static void main(String[] args) {
        int openings = args.length > 0 ? Integer.parseInt(args[0]) : 3_000;
        var trial = new WeekSheetOpening(openings);
        System.out.println("| Folders | Openings | Visits | Server, ms | To paint, ms | Answer, MB |");
        System.out.println("|---:|---:|---:|---:|---:|---:|");
        trial.fill();
        trial.measure(1);
        for (int i = 1; i < FOLDERS; i++) trial.fill();
        trial.measure(FOLDERS);
        trial.node.close();
        System.exit(0);
    }

    /** The folder once more, published and begun. */
    private void fill() {
        FolderId id = node.getBean(JobFolders.class).save("generated", folder);
        node.getBean(Publications.class)
                .publishSample(id, node.getBean(Plans.class).save(id, plan));
        for (int i = 0; i < folder.openings().size(); i += MARKED)
            mark(id, folder.openings().get(i));
    }

    private void mark(FolderId id, Opening opening) {
        var state = node.getBean(OpeningStates.class).of(scheduler, id, opening.id());
        state.list().lines().stream()
                .filter(line -> line.number().isPresent() && !line.release())
                .filter(line -> !state.done().contains(line.code()))
                .map(line -> MarkRequest.done(UUID.randomUUID(), id, opening.id(), line.code(), plan.start()))
                .forEach(mark -> node.getBean(StepLog.class).mark(scheduler, mark));
    }

    private void measure(int folders) {
        int port = node.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
        Page page = Chromium.shared().page(1440, 900, ColorScheme.LIGHT);
        SignInPage.at(port).enter(page, scheduler);
        List<Opened> all = new ArrayList<>();
        for (int i = 0; i <= ROUNDS; i++) all.add(open(page, port));
        page.close();
        all.removeFirst();
        System.out.printf(
                Locale.ROOT,
                "| %d | %,d | %,d | %.0f | %.0f | %.1f |%n",
                folders,
                (long) folders * folder.openings().size(),
                (long) folders * plan.visits().size(),
                median(all.stream().map(Opened::server).toList()),
                median(all.stream().map(Opened::painted).toList()),
                median(all.stream().map(one -> one.bytes() / 1e6).toList()));
    }

    private static Opened open(Page page, int port) {
        page.navigate("http://localhost:%d/week-sheet".formatted(port));
        double painted = ((Number) page.evaluate(FIRST_BLOCK)).doubleValue();
        double server = 0;
        double bytes = 0;
        for (Object answer : (List<?>) page.evaluate(ANSWERS)) {
            var pair = (List<?>) answer;
            server += ((Number) pair.get(0)).doubleValue();
            bytes += ((Number) pair.get(1)).doubleValue();
        }
        return new Opened(server, painted, bytes);
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }
}
