package drylap.load;

import java.net.URI;
import java.net.http.HttpClient;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/** What everybody in the trial stands on: the node, the job, whose openings were released, and where answers are counted. */
record Ground(
        HttpClient http,
        URI node,
        long folder,
        Duration ahead,
        List<String> openings,
        ConcurrentLinkedQueue<String> released,
        Counts counts,
        Ask ask) {
    static Ground of(HttpClient http, URI node, JsonNode told, Counts counts) {
        return new Ground(
                http,
                node,
                told.path("folder").longValue(),
                Duration.between(Instant.now(), Instant.parse(told.path("now").stringValue())),
                names(told.path("openings")),
                new ConcurrentLinkedQueue<>(),
                counts,
                new Ask(counts));
    }

    static List<String> names(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::stringValue)
                .toList();
    }

    /** A little before the node's own time, so that no mark is from the future. */
    Instant markedAt() {
        return Instant.now().plus(ahead).minusSeconds(2);
    }

    String anyOpening(Random draw) {
        return openings.get(draw.nextInt(openings.size()));
    }

    Browser browser() {
        return new Browser(http, node);
    }
}
