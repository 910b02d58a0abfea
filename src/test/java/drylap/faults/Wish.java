package drylap.faults;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What the trial is asked for.
 *
 * @param time after which no further fault is made
 * @param postgres settings of PostgreSQL beside the trial's own, such as {@code synchronous_commit=off}, with which it must find losses
 */
record Wish(int rounds, Duration time, List<Fault> faults, List<String> postgres) {
    private static final int MOST = 24 * 60;
    private static final String ACCEPTED =
            "accepted: --rounds N or --minutes N, and any of --fault NAME, --postgres SETTING=VALUE";

    /** @throws IllegalArgumentException with what would be accepted */
    static Wish of(String... words) {
        int rounds = MOST;
        Duration time = Duration.ofMinutes(MOST);
        List<Fault> faults = new ArrayList<>();
        List<String> postgres = new ArrayList<>();
        for (int i = 0; i < words.length; i += 2) {
            String value = i + 1 < words.length ? words[i + 1] : "";
            switch (words[i]) {
                case "--rounds" -> rounds = number(words[i], value);
                case "--minutes" -> time = Duration.ofMinutes(number(words[i], value));
                case "--fault" -> faults.add(fault(value));
                case "--postgres" -> postgres.add(setting(value));
                default -> throw new IllegalArgumentException("%s is not known; %s".formatted(words[i], ACCEPTED));
            }
        }
        if (rounds == MOST && time.toMinutes() == MOST)
            throw new IllegalArgumentException("how long is not said; " + ACCEPTED);
        return new Wish(rounds, time, faults.isEmpty() ? Arrays.asList(Fault.values()) : faults, postgres);
    }

    private static int number(String option, String text) {
        if (text.matches("[1-9]\\d{0,3}") && Integer.parseInt(text) < MOST) return Integer.parseInt(text);
        throw new IllegalArgumentException(
                "%s: %s; accepted: a whole number from 1 to %d".formatted(option, text, MOST - 1));
    }

    private static Fault fault(String name) {
        return Arrays.stream(Fault.values())
                .filter(fault -> code(fault).equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--fault: %s; accepted: %s"
                        .formatted(
                                name,
                                Arrays.stream(Fault.values()).map(Wish::code).collect(Collectors.joining(", ")))));
    }

    private static String code(Fault fault) {
        return fault.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String setting(String text) {
        if (text.matches("[a-z_]+=[\\w.]+")) return text;
        throw new IllegalArgumentException("--postgres: %s; accepted: SETTING=VALUE".formatted(text));
    }
}
