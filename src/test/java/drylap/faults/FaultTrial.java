package drylap.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Breaks what a cluster stands on while people and programs are at work, again and again, and compares after each fault what was confirmed with
 * what is in the database. Ends with 1 where anything was lost or doubled, or a run did not go on from where it stood.
 */
public final class FaultTrial {
    private final Wish wish;
    private final Map<Fault, Row> rows = new EnumMap<>(Fault.class);
    private final Set<String> known = new HashSet<>();
    private final List<String> findings = new ArrayList<>();
    private final long begun = System.nanoTime();

    private FaultTrial(Wish wish) {
        this.wish = wish;
    }

    private static final class Row {
        int rounds;
        int confirmed;
        int lost;
        int doubled;
        Duration longest = Duration.ZERO;
        Duration silent = Duration.ZERO;
    }

    public static void main(String[] args) throws Exception {
        try {
            System.exit(new FaultTrial(Wish.of(args)).run() ? 0 : 1);
        } catch (IllegalArgumentException wrong) {
            System.err.println(wrong.getMessage());
            System.exit(2);
        }
    }

    private boolean run() throws Exception {
        Path home = Files.createTempDirectory("drylap-faults");
        System.err.println("Consoles and the log of what was confirmed are in " + home);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> Cluster.endAll(home)));
        try (Book book = new Book(home.resolve("confirmed.txt"));
                Cluster cluster = Cluster.start(home, wish.postgres())) {
            Program program = new Program();
            Setting setting = Setting.of(cluster, program, book);
            Ground ground = new Ground(cluster, book, program, setting);
            Ordering ordering = new Ordering(ground);
            try (Load load = new Load(ground)) {
                Scene scene = new Scene(ground, ordering);
                ordering.run(setting.searched());
                load.begin(ordering);
                strikeInTurn(scene, load, book);
                return end(scene);
            }
        }
    }

    private void strikeInTurn(Scene scene, Load load, Book book) throws Exception {
        for (int round = 0; round < wish.rounds(); round++)
            for (Fault fault : wish.faults()) {
                if (System.nanoTime() - begun > wish.time().toNanos()) return;
                if (fault.possible(scene)) strike(fault, scene, load, book, round);
            }
    }

    private void strike(Fault fault, Scene scene, Load load, Book book, int round) throws Exception {
        int before = book.confirmed();
        Row row = rows.computeIfAbsent(fault, _ -> new Row());
        book.beginGap();
        Duration took = fault.strike(scene, round);
        Duration gap = book.longestGap();
        scene.cluster().awaitReady();
        load.rest();
        compare(book, scene.cluster(), fault, row);
        load.goOn();
        row.rounds++;
        row.confirmed += book.confirmed() - before;
        if (took.compareTo(row.longest) > 0) row.longest = took;
        if (gap.compareTo(row.silent) > 0) row.silent = gap;
        System.err.printf(
                "round %d: %s, %.1f s, nobody answered for %.1f s%n",
                round + 1, fault.words(), took.toMillis() / 1e3, gap.toMillis() / 1e3);
    }

    private void compare(Book book, Cluster cluster, Fault fault, Row row) throws Exception {
        try (Connection database = cluster.postgres.connection()) {
            var compared = book.against(Names.found(database));
            row.lost += note("lost", fault, compared.lost());
            row.doubled += note("doubled", fault, compared.doubled());
        }
    }

    /** What was found before is not found again. */
    private int note(String what, Fault fault, List<String> found) {
        int fresh = 0;
        for (String one : found)
            if (known.add(what + one)) {
                findings.add("%s after %s: %s".formatted(what, fault.words(), one));
                fresh++;
            }
        return fresh;
    }

    private boolean end(Scene scene) {
        System.out.println(
                "| Fault | Rounds | Confirmed | Lost | Doubled | Longest recovery, s | Longest without any answer, s |");
        System.out.println("|---|---:|---:|---:|---:|---:|---:|");
        rows.forEach((fault, row) -> System.out.printf(
                "| %s | %d | %d | %d | %d | %.1f | %.1f |%n",
                fault.words(),
                row.rounds,
                row.confirmed,
                row.lost,
                row.doubled,
                row.longest.toMillis() / 1e3,
                row.silent.toMillis() / 1e3));
        for (Fault fault : wish.faults())
            if (!fault.possible(scene))
                System.out.println(fault.words() + ": not possible here, it needs " + fault.needs());
        findings.addAll(scene.worse());
        findings.forEach(System.out::println);
        return findings.isEmpty();
    }
}
