package drylap.load;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One page on the wall of an opening that nobody else works at, and a phone that marks its lines: from the moment at which the phone has the answer
 * to that at which the page was told what is still to do there, which is less after each mark.
 */
final class Probe implements Worker {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    /** Than people do. */
    private static final int MARKS_OFTENER = 12;

    private static final Pattern TO_DO = Pattern.compile("still to do: ([^\"]*)");

    private final Ground ground;
    private final String scheduler;
    private final Browser page;
    private final CrewPhone phone;
    private final LinkedBlockingQueue<Heard> heard = new LinkedBlockingQueue<>();

    private record Heard(long at, String state) {}

    Probe(Ground ground, String scheduler, CrewPhone phone) {
        this.ground = ground;
        this.scheduler = scheduler;
        this.phone = phone;
        page = ground.browser();
    }

    @Override
    public void comeIn() throws IOException, InterruptedException {
        SignIn.as(ground, page, scheduler);
        phone.comeIn();
    }

    /** Its pauses are between marks. */
    @Override
    public Duration pause(Random draw) {
        return Duration.ofSeconds(1);
    }

    /** One opening, line by line. */
    @Override
    public void act(Random draw) throws IOException, InterruptedException {
        String opening = ground.anyOpening(draw);
        OpenPage wall = OpenPage.at(page, "walls", "opening=" + opening);
        try {
            wall.follow(message -> {
                if (isAbout(message, opening)) heard.add(new Heard(System.nanoTime(), toDo(message)));
            });
            markAll(opening, toDo(wall.shown()), draw);
        } finally {
            wall.leave();
        }
    }

    private void markAll(String opening, String before, Random draw) throws IOException, InterruptedException {
        String state = before;
        for (String line : CrewPhone.open(phone.look(opening))) {
            // whatever comes after the last line before the release changes nothing in these words
            if (state.isEmpty()) return;
            Thread.sleep(Think.of(draw).dividedBy(MARKS_OFTENER));
            heard.clear();
            if (!phone.mark(opening, List.of(line))) return;
            Heard told = after(state);
            if (told == null) {
                ground.ask()
                        .failed(
                                Kind.PUSHED,
                                "a page was not told within %d s of line %s at %s: %s"
                                        .formatted(PATIENCE.toSeconds(), line, opening, state));
                return;
            }
            state = told.state();
        }
    }

    /** Counts how long that took; nothing where the page was never told. */
    private @Nullable Heard after(String before) throws InterruptedException {
        long confirmed = System.nanoTime();
        while (System.nanoTime() - confirmed < PATIENCE.toNanos()) {
            Heard one = heard.poll(1, TimeUnit.SECONDS);
            if (one == null || one.state().equals(before)) continue;
            ground.counts().answered(Kind.PUSHED, one.at() - confirmed);
            return one;
        }
        return null;
    }

    private static boolean isAbout(String message, String opening) {
        return message.contains("Hand-over of " + opening);
    }

    /** Empty where nothing is. */
    private static String toDo(String message) {
        var found = TO_DO.matcher(message);
        return found.find() ? found.group(1) : "";
    }

    @Override
    public void leave() {}
}
