package drylap.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The best plan ever found of each generated job, in a file that only ever gets better. */
final class BestKnown {
    private static final String HEADER = "openings,seed,medium,soft";

    /** A generated job by its size and seed. */
    record Job(int openings, long seed) implements Comparable<Job> {
        @Override
        public int compareTo(Job other) {
            return openings != other.openings
                    ? Integer.compare(openings, other.openings)
                    : Long.compare(seed, other.seed);
        }
    }

    /** Less medium cost is better whatever the soft cost. */
    record Cost(long medium, long soft) {
        boolean betterThan(Cost other) {
            return medium != other.medium ? medium < other.medium : soft < other.soft;
        }
    }

    private final Path file;
    private final Map<Job, Cost> costs = new TreeMap<>();

    private BestKnown(Path file) {
        this.file = file;
    }

    static BestKnown read(Path file) {
        BestKnown best = new BestKnown(file);
        try {
            if (Files.exists(file))
                Files.readAllLines(file).stream()
                        .skip(1)
                        .map(line -> line.split(","))
                        .forEach(best::add);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return best;
    }

    private void add(String[] fields) {
        costs.put(
                new Job(Integer.parseInt(fields[0]), Long.parseLong(fields[1])),
                new Cost(Long.parseLong(fields[2]), Long.parseLong(fields[3])));
    }

    Optional<Cost> of(Job job) {
        return Optional.ofNullable(costs.get(job));
    }

    /** Keeps the cost if it is better than what was known, and writes it down at once. */
    void offer(Job job, Cost cost) {
        Cost known = costs.get(job);
        if (known != null && !cost.betterThan(known)) return;
        costs.put(job, cost);
        List<String> lines = new ArrayList<>(List.of(HEADER));
        costs.forEach((one, least) ->
                lines.add("%d,%d,%d,%d".formatted(one.openings(), one.seed(), least.medium(), least.soft())));
        try {
            Files.write(file, lines);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
