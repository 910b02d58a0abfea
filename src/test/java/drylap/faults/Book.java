package drylap.faults;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The driver's own side: what it asked for and what was confirmed to it, in memory and in a file that outlives it. */
final class Book implements AutoCloseable {
    private final Set<String> asked = ConcurrentHashMap.newKeySet();
    private final Set<String> confirmed = ConcurrentHashMap.newKeySet();
    private final Map<Integer, Long> lastBy = new ConcurrentHashMap<>();
    private final PrintWriter file;
    private long lastByAny = System.nanoTime();
    private long longestGap;

    Book(Path path) throws IOException {
        file = new PrintWriter(Files.newBufferedWriter(path, StandardCharsets.UTF_8), true);
    }

    void ask(String operation) {
        if (asked.add(operation)) write("asked " + operation);
    }

    /** @param node the web node that answered */
    synchronized void confirm(String operation, int node) {
        long now = System.nanoTime();
        lastBy.put(node, now);
        longestGap = Math.max(longestGap, now - lastByAny);
        lastByAny = now;
        if (confirmed.add(operation)) write("confirmed " + operation);
    }

    /** For whoever reads the file: why an operation has no answer yet. */
    void trouble(Exception failure) {
        write("trouble %s %s".formatted(Thread.currentThread().getName(), failure));
    }

    private synchronized void write(String line) {
        file.println(line);
    }

    /** Whether a node has confirmed something since a moment of {@link System#nanoTime}. */
    boolean confirmedBy(int node, long since) {
        return lastBy.getOrDefault(node, since - 1) > since;
    }

    synchronized void beginGap() {
        lastByAny = System.nanoTime();
        longestGap = 0;
    }

    /** How long nobody had an answer, at the longest, since {@link #beginGap}. */
    synchronized Duration longestGap() {
        return Duration.ofNanos(longestGap);
    }

    int confirmed() {
        return confirmed.size();
    }

    Comparison against(Map<String, Long> found) {
        return Comparison.of(Set.copyOf(asked), Set.copyOf(confirmed), found);
    }

    @Override
    public void close() {
        file.close();
    }
}
