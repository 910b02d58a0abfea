package drylap.intake.generate;

import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The weather of a district in one hour. */
record Sky(boolean spell, double windMs, double fromDeg) {
    private static final double SPELL_BEGINS = 0.035;
    private static final double SPELL_GOES_ON = 0.8;
    private static final double USUAL_FROM_DEG = 225;

    /** Dry and rainy spells as a chain of hours; the wind freshens with rain and is drawn back to the south-west. */
    static List<Sky> run(int hours, Dice dice) {
        List<Sky> run = new ArrayList<>();
        boolean spell = false;
        double wind = 4;
        double from = dice.between(140, 310);
        for (int h = 0; h < hours; h++) {
            spell = dice.chance(spell ? SPELL_GOES_ON : SPELL_BEGINS);
            wind += 0.3 * ((spell ? 6 : 3.5) - wind) + dice.between(-0.8, 0.8);
            from += 0.04 * (USUAL_FROM_DEG - from) + dice.between(-22, 22);
            run.add(new Sky(spell, Math.max(0.5, wind), (from + 360) % 360));
        }
        return run;
    }

    ForecastHour hour(Instant start, int hourOfDay, Dice dice) {
        double rain = spell ? dice.between(0.3, 2.8) : dice.chance(0.1) ? dice.between(0, 0.15) : 0;
        double chance = spell ? dice.between(0.45, 0.95) : dice.between(0.02, 0.2);
        double warmth = 9.5 + 3.5 * StrictMath.cos((hourOfDay - 15) * StrictMath.PI / 12) + dice.between(-0.5, 0.5);
        return new ForecastHour(
                start,
                Dice.rounded(rain, 1),
                Dice.rounded(chance, 2),
                Dice.rounded(windMs, 1),
                Dice.rounded(windMs * dice.between(1.3, 1.6), 1),
                Dice.rounded(fromDeg, 0),
                Dice.rounded(warmth, 1),
                Dice.rounded(spell ? dice.between(85, 98) : dice.between(60, 85), 0));
    }
}
