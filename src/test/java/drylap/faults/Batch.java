package drylap.faults;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/**
 * Marks that a phone has waiting, with their keys.
 *
 * @param lines by key
 */
record Batch(long folder, String opening, Map<String, String> lines, Instant markedAt) {
    static Batch of(long folder, String opening, List<String> lines) {
        Map<String, String> byKey = new LinkedHashMap<>();
        lines.forEach(line -> byKey.put(UUID.randomUUID().toString(), line));
        return new Batch(folder, opening, byKey, Instant.now().minusSeconds(5));
    }

    /** By line: that it is done once, whoever did it. By key: that nothing is written twice. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        lines.forEach((key, line) -> {
            names.add(Names.mark(folder, opening, line));
            names.add(Names.key(key));
        });
        return names;
    }

    String json() {
        return lines.entrySet().stream()
                .map(one ->
                        "{\"key\":\"%s\",\"folder\":%d,\"opening\":\"%s\",\"line\":\"%s\",\"kind\":\"done\",\"markedAt\":\"%s\",\"note\":\"offline\"}"
                                .formatted(one.getKey(), folder, opening, one.getValue(), markedAt))
                .collect(Collectors.joining(",", "[", "]"));
    }

    /** What an answer confirms: the line is done, whether by this sending or by an earlier one. */
    List<String> confirmed(JsonNode answers) {
        List<String> names = new ArrayList<>();
        for (JsonNode answer : answers) {
            String key = answer.path("key").stringValue();
            String outcome = answer.path("outcome").stringValue();
            if (outcome.equals("refused")) continue;
            names.add(Names.mark(folder, opening, lines.getOrDefault(key, "")));
            // what another had marked before is done, but not under this key
            if (outcome.equals("marked")) names.add(Names.key(key));
        }
        return names;
    }
}
