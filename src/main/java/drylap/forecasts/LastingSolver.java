package drylap.forecasts;

import drylap.forecasts.LastingRain.Solved;
import drylap.forecasts.LastingRain.Unsolved;
import drylap.speech.Saying;
import drylap.weather.RainPersistence;
import drylap.weather.RainPersistence.Beyond;
import drylap.weather.RainPersistence.Found;
import drylap.weather.RainPersistence.Told;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Solves how rain lasts from tellings of one source, each of hours that no other one has. */
final class LastingSolver {
    /** Where more of them than this share are of no model, a source's two chances are not of the same event. */
    private static final double MOST_LEFT_OUT = 0.25;

    /** A telling whose hours give nearly the same chance however rain lasts says nothing. */
    private static final double ROOM = 0.01;

    /** @param date of its first hour, at the site */
    record Telling(LocalDate date, Told told) {}

    private LastingSolver() {}

    static LastingRain of(ForecastSource source, List<Telling> all) {
        List<Telling> saying =
                all.stream().filter(one -> one.told().room() >= ROOM).toList();
        List<Telling> sound =
                saying.stream().filter(one -> one.told().possible()).toList();
        long days = sound.stream().map(Telling::date).distinct().count();
        if (saying.size() - sound.size() > MOST_LEFT_OUT * saying.size())
            return new Unsolved(Saying.of(
                    "{0} of {1} tellings by {2} are of no model: its two chances are not of the same event",
                    saying.size() - sound.size(), saying.size(), Saying.of(source.words())));
        if (sound.size() < LastingRain.LEAST_TELLINGS || days < LastingRain.LEAST_DAYS)
            return new Unsolved(Saying.of(
                    "{0} tellings of {1} days by {2} say something so far; {3} of {4} days do",
                    sound.size(), days, Saying.of(source.words()), LastingRain.LEAST_TELLINGS, LastingRain.LEAST_DAYS));
        return switch (RainPersistence.of(told(sound))) {
            case Beyond beyond ->
                new Unsolved(Saying.of(
                        "{0} tellings by {1} together ask for {2}",
                        sound.size(),
                        Saying.of(source.words()),
                        Saying.of(beyond.bound().words())));
            case Found(double rho) ->
                new Solved(
                        rho,
                        spread(sound),
                        sound.size(),
                        sound.getFirst().told().hourly().size(),
                        (int) days,
                        saying.size() - sound.size(),
                        source);
        };
    }

    private static List<Told> told(List<Telling> tellings) {
        return tellings.stream().map(Telling::told).toList();
    }

    /** Days, since tellings of one day are of one weather: the jackknife, from memory of Efron. */
    private static double spread(List<Telling> sound) {
        Map<LocalDate, List<Telling>> byDay =
                sound.stream().collect(Collectors.groupingBy(Telling::date, TreeMap::new, Collectors.toList()));
        List<Double> without = new ArrayList<>();
        for (LocalDate day : byDay.keySet())
            without.add(end(RainPersistence.of(
                    told(sound.stream().filter(one -> !one.date().equals(day)).toList()))));
        double mean =
                without.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares =
                without.stream().mapToDouble(rho -> (rho - mean) * (rho - mean)).sum();
        return Math.sqrt(squares * (without.size() - 1) / without.size());
    }

    /** Without a day the rest may ask for more than the chain can give; then the end of its range stands. */
    private static double end(RainPersistence solution) {
        return switch (solution) {
            case Found(double rho) -> rho;
            case Beyond beyond -> beyond.bound() == RainPersistence.Bound.INDEPENDENT_HOURS ? 0 : 1;
        };
    }
}
