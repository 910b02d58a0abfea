package drylap.weather;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rain that wind drives on to a wall, litres per square metre of an open airfield's wall, by ISO 15927-3: for ranking
 * hours and walls. Published models differ by a factor of two and more, so it promises no litres.
 */
public final class DrivingRain {
    /** A dry stretch this long ends a spell; from memory of ISO 15927-3. */
    private static final Duration END_OF_SPELL = Duration.ofHours(96);

    private DrivingRain() {}

    /** The hourly term; 0 when the wind comes along the wall or from behind it. */
    public static double hourly(double windMs, double rainMm, double windFromDeg, double azimuthDeg) {
        return headOn(windMs, rainMm) * share(windFromDeg, azimuthDeg);
    }

    public static double hourly(ForecastHour hour, double azimuthDeg) {
        return hourly(hour.windMs(), hour.rainMm(), hour.windFromDeg(), azimuthDeg);
    }

    /**
     * Hours of driving rain that belong together.
     *
     * @param litres the sum of the hourly terms, per square metre
     */
    record Spell(Instant start, double litres) {
        Spell and(double term) {
            return new Spell(start, litres + term);
        }
    }

    /** Sums of the hourly terms, one for each spell that this wall sees, in order of time. */
    public static List<Double> spells(List<ForecastHour> hours, double azimuthDeg) {
        return timedSpells(hours, azimuthDeg).stream().map(Spell::litres).toList();
    }

    static List<Spell> timedSpells(List<ForecastHour> hours, double azimuthDeg) {
        List<Spell> spells = new ArrayList<>();
        @Nullable Instant wetUntil = null;
        for (ForecastHour hour : hours) {
            double term = hourly(hour, azimuthDeg);
            if (term <= 0) continue;
            if (wetUntil == null || dryLongEnough(wetUntil, hour.start())) spells.add(new Spell(hour.start(), term));
            else spells.add(spells.removeLast().and(term));
            wetUntil = hour.start().plus(Duration.ofHours(1));
        }
        return List.copyOf(spells);
    }

    /** The hourly term of a wall that faces the wind. */
    static double headOn(double windMs, double rainMm) {
        return 2.0 / 9 * windMs * Math.pow(rainMm, 8.0 / 9);
    }

    /** How much of it a wall gets that does not face the wind. */
    static double share(double windFromDeg, double azimuthDeg) {
        return Math.max(0, Math.cos(Math.toRadians(windFromDeg - azimuthDeg)));
    }

    private static boolean dryLongEnough(Instant wetUntil, Instant nextWet) {
        return Duration.between(wetUntil, nextWet).compareTo(END_OF_SPELL) >= 0;
    }
}
