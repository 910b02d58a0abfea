package drylap.load;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/** A window crew: looks at its day, goes to an opening, marks lines as a phone does that was without a connection, releases what is ready. */
final class CrewPhone implements Worker {
    private static final double LOOKS_AT_DAY = 0.3;
    private static final int MOST_LINES = 3;

    private final Ground ground;
    private final Browser browser;
    private final String name;

    CrewPhone(Ground ground, String name) {
        this.ground = ground;
        this.name = name;
        browser = ground.browser();
    }

    @Override
    public void comeIn() throws IOException, InterruptedException {
        SignIn.as(ground, browser, name);
        day();
    }

    private void day() throws IOException, InterruptedException {
        ground.ask()
                .timed(Kind.MY_DAY, () -> OpenPage.at(browser, "my-day", ""))
                .leave();
    }

    @Override
    public void act(Random draw) throws IOException, InterruptedException {
        if (draw.nextDouble() < LOOKS_AT_DAY) day();
        var stops = ground.ask()
                .timed(Kind.DAY, () -> browser.get("/api/day").good().json());
        String opening = stops.isEmpty()
                ? ground.anyOpening(draw)
                : stops.path(draw.nextInt(stops.size())).path("opening").stringValue();
        JsonNode seen = look(opening);
        List<String> open = open(seen);
        if (!open.isEmpty()) mark(opening, open.subList(0, Math.min(open.size(), 1 + draw.nextInt(MOST_LINES))));
        else if (seen.path("releasable").asBoolean() && !seen.path("released").asBoolean()) release(opening, seen);
    }

    JsonNode look(String opening) throws IOException, InterruptedException {
        return ground.ask()
                .timed(
                        Kind.OPENING,
                        () -> browser.get("/api/openings/%d/%s".formatted(ground.folder(), opening))
                                .good()
                                .json());
    }

    /** Its lines that are not done, in their order. */
    static List<String> open(JsonNode opening) {
        return StreamSupport.stream(opening.path("lines").spliterator(), false)
                .filter(line -> line.path("yours").asBoolean()
                        && !line.path("release").asBoolean()
                        && !line.path("done").asBoolean())
                .map(line -> line.path("code").stringValue())
                .toList();
    }

    /** @return whether every line is done now; the trade says no where a layer would lap the wrong way round */
    boolean mark(String opening, List<String> lines) throws IOException, InterruptedException {
        Instant at = ground.markedAt();
        String batch = lines.stream()
                .map(line ->
                        "{\"key\":\"%s\",\"folder\":%d,\"opening\":\"%s\",\"line\":\"%s\",\"kind\":\"done\",\"markedAt\":\"%s\"}"
                                .formatted(UUID.randomUUID(), ground.folder(), opening, line, at))
                .collect(Collectors.joining(",", "[", "]"));
        JsonNode answers = ground.ask()
                .judged(
                        Kind.MARKS,
                        () -> browser.post("/api/marks", batch).good().json(),
                        CrewPhone::refusedAny);
        return !refusedAny(answers);
    }

    private static boolean refusedAny(JsonNode answers) {
        return StreamSupport.stream(answers.spliterator(), false)
                .anyMatch(one -> one.path("outcome").stringValue().equals("refused"));
    }

    private void release(String opening, JsonNode seen) throws IOException, InterruptedException {
        String body = "{\"key\":\"%s\",\"folder\":%d,\"openings\":[{\"opening\":\"%s\",\"version\":%d}]}"
                .formatted(
                        UUID.randomUUID(),
                        ground.folder(),
                        opening,
                        seen.path("version").longValue());
        JsonNode answer = ground.ask()
                .judged(
                        Kind.RELEASE,
                        () -> browser.post("/api/releases", body).good().json(),
                        one -> !one.path("outcome").stringValue().equals("released"));
        if (answer.path("outcome").stringValue().equals("released"))
            ground.released().add(opening);
    }

    @Override
    public void leave() {}
}
