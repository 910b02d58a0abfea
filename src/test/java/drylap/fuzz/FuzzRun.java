package drylap.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fuzzes one target for a while in a process of its own, guided by which branches of our code its inputs reach. */
record FuzzRun(FuzzTarget target, long executions, int branches, int kept, Set<String> findings) {
    private static final Path WORK = Path.of("target/fuzz");
    private static final Duration START_AND_END = Duration.ofMinutes(20);
    private static final String LARGEST_INPUT = "16384";
    private static final String SECONDS_FOR_ONE_INPUT = "30";
    private static final Pattern EXECUTIONS = Pattern.compile("stat::number_of_executed_units: (\\d+)");
    private static final Pattern REACHED = Pattern.compile("#\\d+\\s+\\w+\\s+cov: (\\d+) ft: \\d+ corp: (\\d+)/");
    private static final Pattern FINDING = Pattern.compile("(?m)^== Java Exception: (.*)$|ERROR: libFuzzer: (.*)$");

    static FuzzRun of(FuzzTarget target, Duration time) {
        try {
            Path found = Files.createDirectories(WORK.resolve(target.code() + "-found"));
            Path kept = Files.createDirectories(WORK.resolve(target.code()));
            Path log = WORK.resolve(target.code() + ".log");
            Process process = new ProcessBuilder(command(target, time, kept, found))
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            boolean ended = process.waitFor(time.plus(START_AND_END).toSeconds(), TimeUnit.SECONDS);
            if (!ended) process.destroyForcibly().waitFor();
            return told(target, Files.readString(log, StandardCharsets.ISO_8859_1), ended);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static List<String> command(FuzzTarget target, Duration time, Path kept, Path found) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-XX:+EnableDynamicAgentLoading",
                "--enable-native-access=ALL-UNNAMED",
                "-D%s=%s".formatted(FuzzedReader.TARGET, target.code()),
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + FuzzedReader.class.getName(),
                "--instrumentation_includes=drylap.**",
                "--custom_hook_includes=drylap.**",
                "--reproducer_path=" + found,
                "--keep_going=20",
                "-artifact_prefix=" + found + "/",
                "-max_total_time=" + time.toSeconds(),
                "-timeout=" + SECONDS_FOR_ONE_INPUT,
                "-max_len=" + LARGEST_INPUT,
                "-rss_limit_mb=3072",
                "-print_final_stats=1",
                kept.toString(),
                target.seeds().toString());
    }

    private static FuzzRun told(FuzzTarget target, String log, boolean ended) {
        long executions = 0;
        int branches = 0;
        int kept = 0;
        Set<String> findings = new LinkedHashSet<>();
        for (Matcher one = EXECUTIONS.matcher(log); one.find(); ) executions = Long.parseLong(one.group(1));
        for (Matcher one = REACHED.matcher(log); one.find(); ) {
            branches = Integer.parseInt(one.group(1));
            kept = Integer.parseInt(one.group(2));
        }
        for (Matcher one = FINDING.matcher(log); one.find(); )
            findings.add(one.group(1) == null ? one.group(2) : one.group(1));
        if (!ended) findings.add("did not end by itself");
        if (executions == 0) findings.add("did not run: see the log");
        return new FuzzRun(target, executions, branches, kept, findings);
    }

    /** The row of the table. */
    String row(Duration time) {
        return "| %s | %d | %,d | %,d | %,d | %d |"
                .formatted(target.code(), time.toSeconds(), executions, branches, kept, findings.size());
    }
}
