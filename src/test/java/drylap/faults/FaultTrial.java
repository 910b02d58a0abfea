package drylap.faults;

import java.io.IOException;
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
 * what is in the database. {@code FaultTrial --rounds N | --minutes N}; ends with 1 where anything was lost or doubled, or a run did not go on from
 * where it stood.
 */
public final class FaultTrial {
    private static final int MOST = 24 * 60;

    private final Map<Fault, Row> rows = new EnumMap<>(Fault.class);
    private final Set<String> known = new HashSet<>();
    private final List<String> findings = new ArrayList<>();

    private FaultTrial() {}

    private static final class Row {
        int rounds;
        int confirmed;
        int lost;
        int doubled;
        Duration longest = Duration.ZERO;
    }

    public static void main(String[] args) throws Exception {
        try {
            if (args.length != 2 || !args[0].matches("--(rounds|minutes)"))
                throw new IllegalArgumentException("accepted: --rounds N or --minutes N");
            int number = number(args[0], args[1]);
            boolean rounds = args[0].equals("--rounds");
            System.exit(new FaultTrial().run(rounds ? number : Integer.MAX_VALUE, rounds ? null : Duration.ofMinutes(number)) ? 0 : 1);
        } catch (IllegalArgumentException wrong) {
            System.err.println(wrong.getMessage());
            System.exit(2);
        }
    }

    private static int number(String option, String text) {
        if (text.matches("[1-9]\\d{0,3}") && Integer.parseInt(text) <= MOST) return Integer.parseInt(text);
        throw new IllegalArgumentException("%s: %s; accepted: a whole number from 1 to %d".formatted(option, text, MOST));
    }

    private boolean run(int rounds, @org.jspecify.annotations.Nullable Duration time) throws Exception {
        long begun = System.nanoTime();
        Path home = Files.createTempDirectory("drylap-faults");
        System.err.println("Consoles and the log of what was confirmed are in " + home);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> Cluster.endAll(home)));
        Book book = new Book(home.resolve("confirmed.txt"));
        try (book; Cluster cluster = Cluster.start(home)) {
            Program program = new Program();
            Setting setting = Setting.of(cluster, program, book);
            try (Load load = new Load(cluster, book, program, setting)) {
                Scene scene = new Scene(cluster, book, load, setting);
                load.askRun(setting.searched());
                load.begin();
                for (int round = 0; round < rounds; round++)
                    for (Fault fault : Fault.values())
                        if (time == null || System.nanoTime() - begun < time.toNanos()) strike(fault, scene, load, book, round);
                        else if (round < rounds) return end(scene, book);
                return end(scene, book);
            }
        }
    }

    private void strike(Fault fault, Scene scene, Load load, Book book, int round) throws Exception {
        if (!fault.possible(scene)) return;
        int before = book.confirmed();
        Row row = rows.computeIfAbsent(fault, _ -> new Row());
        Duration took = fault.strike(scene, round);
        scene.cluster().awaitReady();
        load.rest();
        compare(book, scene.cluster(), fault, row);
        load.goOn();
        row.rounds++;
        row.confirmed += book.confirmed() - before;
        if (took.compareTo(row.longest) > 0) row.longest = took;
        System.err.printf("round %d: %s, %.1f s%n", round + 1, fault.words(), took.toMillis() / 1e3);
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

    private boolean end(Scene scene, Book book) throws IOException {
        System.out.println("| Fault | Rounds | Confirmed | Lost | Doubled | Longest recovery, s |");
        System.out.println("|---|---:|---:|---:|---:|---:|");
        rows.forEach((fault, row) -> System.out.printf(
                "| %s | %d | %d | %d | %d | %.1f |%n",
                fault.words(),
                row.rounds,
                row.confirmed,
                row.lost,
                row.doubled,
                row.longest.toMillis() / 1e3));
        for (Fault fault : Fault.values())
            if (!fault.possible(scene)) System.out.println(fault.words() + ": not possible here, it needs the right to mount a disk");
        findings.addAll(scene.worse());
        findings.forEach(System.out::println);
        return findings.isEmpty();
    }
}
