package drylap.faults;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/** Marks at openings: by another program one by one, and by a phone that was without a connection. */
final class Marking {
    private static final int LINES_OF_A_BATCH = 3;

    private final Ground ground;
    private final List<Program.Page> pages;
    private final AtomicInteger next = new AtomicInteger();

    Marking(Ground ground) {
        this.ground = ground;
        pages = ground.cluster().webs.stream().map(Program.Page::new).toList();
    }

    /** An opening as it was read. */
    private record Seen(long folder, String opening, String path, Program.Answer answer) {
        List<JsonNode> openLines() {
            return StreamSupport.stream(answer.json().path("lines").spliterator(), false)
                    .filter(line -> line.path("trade").stringValue().equals("window"))
                    .filter(line -> !line.path("release").asBoolean()
                            && !line.path("done").asBoolean())
                    .toList();
        }
    }

    private Seen look(Random draw) throws IOException, InterruptedException {
        long folder = ground.setting().marked();
        String opening = ground.setting().opening(next.getAndIncrement());
        String path = "/api/v1/folders/%d/openings/%s".formatted(folder, opening);
        var answer = ground.program().get(ground.web(Ground.some(draw)), path);
        if (answer.status() != 200) throw new IOException("reading is answered with " + answer.status());
        return new Seen(folder, opening, path, answer);
    }

    /** A mark by another program: sent again with its key, to one node after the other, until there is an answer. */
    void one(Random draw) throws IOException, InterruptedException {
        Seen seen = look(draw);
        var open = seen.openLines().stream()
                .filter(line -> line.path("next").asBoolean())
                .findFirst();
        if (open.isEmpty()) return;
        String line = open.get().path("line").stringValue();
        String name = Names.mark(seen.folder(), seen.opening(), line);
        String key = UUID.randomUUID().toString();
        String body = "{\"line\":\"%s\",\"kind\":\"done\",\"markedAt\":\"%s\"}"
                .formatted(line, Instant.now().minusSeconds(1));
        ground.book().ask(name);
        ground.untilAnswered(Ground.some(draw), node -> {
            var answer = ground.program()
                    .post(
                            ground.web(node),
                            seen.path() + "/marks",
                            key,
                            seen.answer().etag(),
                            body);
            if (answer.status() >= 500) throw new IOException("a mark is answered with " + answer.status());
            if (answer.status() < 300) ground.book().confirm(name, node);
            return answer;
        });
    }

    /** A phone's marks of a wall without a connection: the same batch three times, twice of them at once on two nodes. */
    void batchThrice(Random draw) throws Exception {
        Seen seen = look(draw);
        List<String> lines = seen.openLines().stream()
                .limit(LINES_OF_A_BATCH)
                .map(line -> line.path("line").stringValue())
                .toList();
        if (lines.isEmpty()) return;
        Batch batch = Batch.of(seen.folder(), seen.opening(), lines);
        batch.names().forEach(ground.book()::ask);
        try (var both = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<?>> sent = new ArrayList<>();
            for (int node = 0; node < Cluster.WEBS; node++) {
                int first = node;
                sent.add(both.submit(() -> send(batch, first)));
            }
            for (Future<?> one : sent) one.get();
        }
        send(batch, Ground.some(draw));
    }

    private Object send(Batch batch, int first) throws InterruptedException {
        return ground.untilAnswered(first, node -> {
            var names = batch.confirmed(pages.get(node).marks(batch.json()));
            names.forEach(name -> ground.book().confirm(name, node));
            return names;
        });
    }
}
