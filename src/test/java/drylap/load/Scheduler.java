package drylap.load;

import java.io.IOException;
import java.util.Random;

/** Has the week sheet open all the time, told of what changes; loads it anew, looks at the wall of an opening, prints the week. */
final class Scheduler extends AtPage {
    private static final double RELOADS = 0.5;
    private static final double PRINTS = 0.9;

    Scheduler(Ground ground, String name, Pushes pushes) {
        super(ground, name, pushes, Kind.WEEK_SHEET, "week-sheet");
    }

    @Override
    public void act(Random draw) throws IOException, InterruptedException {
        OpenPage sheet = page();
        if (sheet == null) open();
        else if (sheet.lost()) {
            ground.ask().failed(Kind.PUSHED, "a page's socket was closed");
            openAnew();
        }
        double what = draw.nextDouble();
        if (what < RELOADS) openAnew();
        else if (what < PRINTS) lookAtWall(ground.anyOpening(draw));
        else
            ground.ask()
                    .timed(
                            Kind.WEEK_PAPER,
                            () -> browser.get("/papers/week.pdf?folder=%d&published=true&paper=a3"
                                            .formatted(ground.folder()))
                                    .good());
    }

    private void lookAtWall(String opening) throws IOException, InterruptedException {
        ground.ask()
                .timed(Kind.WALL, () -> OpenPage.at(browser, "walls", "opening=" + opening))
                .leave();
    }
}
