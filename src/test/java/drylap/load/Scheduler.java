package drylap.load;

import java.io.IOException;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Has the week sheet open all the time, told of what changes; loads it anew, looks at the wall of an opening, prints the week. */
final class Scheduler implements Worker {
    private static final double RELOADS = 0.5;
    private static final double PRINTS = 0.9;

    private final Ground ground;
    private final Browser browser;
    private final String name;
    private final Pushes pushes;
    private @Nullable OpenPage sheet;

    Scheduler(Ground ground, String name, Pushes pushes) {
        this.ground = ground;
        this.name = name;
        this.pushes = pushes;
        browser = ground.browser();
    }

    @Override
    public void comeIn() throws IOException, InterruptedException {
        SignIn.as(ground, browser, name);
        open();
    }

    private void open() throws IOException, InterruptedException {
        sheet = ground.ask().timed(Kind.WEEK_SHEET, () -> OpenPage.at(browser, "week-sheet", ""));
        sheet.follow(pushes::one);
    }

    @Override
    public void act(Random draw) throws IOException, InterruptedException {
        if (sheet == null) open();
        else if (sheet.lost()) {
            ground.ask().failed(Kind.PUSHED, "a page's socket was closed");
            open();
        }
        double what = draw.nextDouble();
        if (what < RELOADS) reload();
        else if (what < PRINTS) lookAtWall(ground.anyOpening(draw));
        else
            ground.ask()
                    .timed(
                            Kind.WEEK_PAPER,
                            () -> browser.get("/papers/week.pdf?folder=%d&published=true&paper=a3"
                                            .formatted(ground.folder()))
                                    .good());
    }

    private void reload() throws IOException, InterruptedException {
        leave();
        open();
    }

    private void lookAtWall(String opening) throws IOException, InterruptedException {
        ground.ask()
                .timed(Kind.WALL, () -> OpenPage.at(browser, "walls", "opening=" + opening))
                .leave();
    }

    @Override
    public void leave() throws IOException, InterruptedException {
        OpenPage before = sheet;
        sheet = null;
        if (before != null) before.leave();
    }
}
