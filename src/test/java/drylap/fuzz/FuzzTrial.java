package drylap.fuzz;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Fuzzes the readers of files from outside, one after the other, each for its share of the time, and prints a row for each. {@code FuzzTrial --minutes N [--target NAME]...}; what
 * breaks a reader is under {@code target/fuzz}. Ends with 1 where anything was found: the input then goes into the target's seeds, so that the tests keep it.
 */
public final class FuzzTrial {
    private static final int MOST_MINUTES = 24 * 60;

    private FuzzTrial() {}

    public static void main(String[] args) {
        try {
            System.exit(run(args) ? 0 : 1);
        } catch (IllegalArgumentException wrong) {
            System.err.println(wrong.getMessage());
            System.exit(2);
        }
    }

    private static boolean run(String[] args) {
        int minutes = 1;
        List<FuzzTarget> targets = new ArrayList<>();
        for (int i = 0; i < args.length; i += 2) {
            String value = i + 1 < args.length ? args[i + 1] : "";
            switch (args[i]) {
                case "--minutes" -> minutes = minutes(value);
                case "--target" -> targets.add(FuzzTarget.of(value));
                default ->
                    throw new IllegalArgumentException(
                            "%s is not known; accepted: --minutes N, --target NAME".formatted(args[i]));
            }
        }
        return run(Duration.ofMinutes(minutes), targets.isEmpty() ? Arrays.asList(FuzzTarget.values()) : targets);
    }

    private static int minutes(String text) {
        if (text.matches("[1-9]\\d{0,3}") && Integer.parseInt(text) <= MOST_MINUTES) return Integer.parseInt(text);
        throw new IllegalArgumentException(
                "--minutes: %s; accepted: a whole number from 1 to %d".formatted(text, MOST_MINUTES));
    }

    private static boolean run(Duration time, List<FuzzTarget> targets) {
        Duration each = time.dividedBy(targets.size());
        System.out.println("| Target | Seconds | Executions | Branches reached | Inputs kept | Findings |");
        System.out.println("|---|---:|---:|---:|---:|---:|");
        boolean sound = true;
        List<String> found = new ArrayList<>();
        for (FuzzTarget target : targets) {
            FuzzRun run = FuzzRun.of(target, each);
            System.out.println(run.row(each));
            run.findings().forEach(one -> found.add("%s: %s".formatted(target.code(), one)));
            sound &= run.findings().isEmpty();
        }
        found.forEach(System.out::println);
        return sound;
    }
}
