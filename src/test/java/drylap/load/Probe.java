package drylap.load;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/**
 * One page on the wall of an opening that nobody else works at, and a phone that marks its lines: from the moment at which the phone has the answer
 * to that at which the page was told what speaks against the opening's release now, which is another thing after each mark.
 */
final class Probe implements Worker {
    private static final long PATIENCE_S = 60;
    private static final Pattern STATE = Pattern.compile(
            "\"value\":\\s*\"((?:[^\"\\\\]|\\\\.)*(?:not done|is missing|lap missing|waits for)[^\"]*)\"");

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

    /** One opening, line by line. */
    @Override
    public void act(Random draw) throws IOException, InterruptedException {
        String opening = ground.anyOpening(draw);
        OpenPage wall = OpenPage.at(page, "walls", "opening=" + opening).follow(message -> state(message, opening));
        try {
            JsonNode seen = phone.look(opening);
            for (String line : CrewPhone.open(seen)) {
                Thread.sleep(Think.of(draw).dividedBy(6));
                heard.clear();
                mark(opening, line);
            }
        } finally {
            wall.leave();
        }
    }

    private void state(String message, String opening) {
        if (!message.contains("Hand-over of " + opening)) return;
        var found = STATE.matcher(message);
        String state = found.results().map(one -> one.group(1)).sorted().collect(Collectors.joining("; "));
        heard.add(new Heard(System.nanoTime(), state));
    }

    private void mark(String opening, String line) throws IOException, InterruptedException {
        if (!phone.mark(opening, List.of(line))) return;
        long confirmed = System.nanoTime();
        await(confirmed, line);
    }

    private void await(long confirmed, String line) throws InterruptedException {
        Heard one = heard.poll(PATIENCE_S, TimeUnit.SECONDS);
        if (one == null) ground.ask().failed(Kind.PUSHED, "a page was not told within " + PATIENCE_S + " s");
        else {
            System.err.println("PROBE " + line + " " + (one.at() - confirmed) / 1_000_000 + " " + one.state());
            ground.counts().answered(Kind.PUSHED, one.at() - confirmed);
        }
    }

    @Override
    public void leave() {}
}
