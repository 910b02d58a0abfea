package drylap.ui.drawn;

import drylap.kernel.Coded;
import drylap.kernel.Task;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An hour of a facade's strip.
 *
 * @param at its start, by the clock of the site
 * @param told none where the forecast does not tell of it
 * @param untold why not; empty where it does
 * @param open the tasks for which the wall is open at the start of the hour
 */
public record StripHour(LocalDateTime at, Optional<Told> told, String untold, boolean dark, List<Task> open) {
    private static final int MINUTES = 60;

    /**
     * What the forecast says.
     *
     * @param rainMm of the hour
     * @param chance percent
     * @param counts whether the contractor's rules count it as rain
     * @param wall driving rain on this wall, litres per square metre of an open airfield
     * @param wets whether the wall must dry after it
     * @param gustMs m/s
     * @param celsius °C
     */
    public record Told(
            double rainMm, int chance, boolean counts, double wall, boolean wets, double gustMs, double celsius) {}

    public StripHour {
        open = List.copyOf(open);
    }

    /** @param start where the strip begins */
    static List<StripHour> of(Strip strip, ZonedDateTime start) {
        List<StripHour> hours = new ArrayList<>();
        for (long at = 0; at + MINUTES <= strip.length(); at += MINUTES) hours.add(hour(strip, start, at));
        return List.copyOf(hours);
    }

    private static StripHour hour(Strip strip, ZonedDateTime start, long at) {
        var told = told(strip, at);
        String untold = at < strip.sky().from() ? "not told" : "beyond the forecast: climate only";
        return new StripHour(
                start.plusMinutes(at).toLocalDateTime(),
                told,
                told.isPresent() ? "" : untold,
                within(strip.dark(), at),
                strip.tasks().stream()
                        .filter(task -> within(task.spans(), at))
                        .map(task -> Coded.of(Task.class, task.task()))
                        .toList());
    }

    private static Optional<Told> told(Strip strip, long at) {
        var sky = strip.sky();
        int i = Math.toIntExact(Math.floorDiv(at - sky.from(), MINUTES));
        if (i < 0 || at >= strip.forecastEnd() || i >= sky.rain().size()) return Optional.empty();
        return Optional.of(new Told(
                sky.rain().get(i),
                sky.chance().get(i),
                sky.raining().get(i),
                sky.wall().get(i),
                sky.wetting().get(i),
                sky.gust().get(i),
                sky.temperature().get(i)));
    }

    private static boolean within(List<Strip.Stretch> stretches, long at) {
        return stretches.stream().anyMatch(one -> one.from() <= at && at < one.until());
    }
}
