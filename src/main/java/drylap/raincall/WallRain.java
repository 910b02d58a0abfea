package drylap.raincall;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.sites.Opening;
import drylap.weather.DrivingRain;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;

/**
 * Water expected on an open opening: driving rain on its wall times its area times the chance of that hour's rain, in the hours
 * that count as raining. A wall in the lee gets a share of what a wall in the wind gets, and air never stands quite still,
 * since rain is never exactly from one side: deduced. For ranking openings; no promise of litres (decision 025).
 */
record WallRain(Forecast forecast, Rules rules, double azimuthDeg) {
    /** Light air, the least wind of Beaufort's scale that moves smoke; deduced. */
    private static final double LEAST_WIND_MS = 1;

    private static final int MINUTES_AN_HOUR = 60;

    /** In an hour: where light rain ends and moderate rain begins (AMS glossary, from memory). */
    private static final double SHOWER_MM = 2.5;

    Intake on(Opening opening, Instant from, Duration length) {
        double squareMetres = opening.widthMm() * (double) opening.heightMm() / 1e6;
        double[] litres = new double[(int) length.toMinutes()];
        for (var hour : forecast.hours())
            if (rains(hour)) pour(litres, minutesTo(from, hour.start()), litresAnHour(hour) * squareMetres);
        return Intake.of(litres);
    }

    /** Rain that is seen coming and that no forecast has: an hour of it, head-on at every wall, since nobody knows its side. */
    Intake shower(Opening opening, Instant from, int start, Duration length) {
        double wind = forecast.hours().stream()
                .filter(hour -> !hour.start().isAfter(from.plus(Duration.ofMinutes(start))))
                .reduce((_, later) -> later)
                .map(ForecastHour::windMs)
                .orElse(0.0);
        double headOn = DrivingRain.hourly(Math.max(LEAST_WIND_MS, wind), SHOWER_MM, azimuthDeg, azimuthDeg);
        double[] litres = new double[(int) length.toMinutes()];
        pour(litres, start, headOn * opening.widthMm() * opening.heightMm() / 1e6);
        return Intake.of(litres);
    }

    private static void pour(double[] litres, int start, double litresAnHour) {
        int end = Math.min(litres.length, start + MINUTES_AN_HOUR);
        for (int minute = Math.max(0, start); minute < end; minute++) litres[minute] = litresAnHour / MINUTES_AN_HOUR;
    }

    /** Of a square metre; expected, so rain that is half as likely counts half. */
    double litresAnHour(ForecastHour hour) {
        double wind = Math.max(LEAST_WIND_MS, hour.windMs());
        double headOn = DrivingRain.hourly(wind, hour.rainMm(), azimuthDeg, azimuthDeg);
        double driven = DrivingRain.hourly(wind, hour.rainMm(), hour.windFromDeg(), azimuthDeg);
        return hour.rainProbability() * Math.max(driven, headOn * rules.value(Rule.LEE_SHARE));
    }

    private boolean rains(ForecastHour hour) {
        return hour.rainProbability() >= rules.value(Rule.RAIN_P) && hour.rainMm() >= rules.value(Rule.RAIN_MM);
    }

    /** To the minute below: a call within a minute is for that minute. */
    private static int minutesTo(Instant from, Instant to) {
        return (int) Math.clamp(Math.floorDiv(Duration.between(from, to).toSeconds(), 60), -100_000, 100_000);
    }
}
