package drylap.forecasts.formats;

import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastWords;
import drylap.forecasts.PeriodChance;
import drylap.forecasts.ReadForecast;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.SequencedMap;
import org.jspecify.annotations.Nullable;

/** Makes the one normal form of the hours that a source told: the first unbroken stretch of whole hours. */
final class Normal {
    private static final List<Quantity> NEEDED = List.of(
            Quantity.RAIN, Quantity.CHANCE, Quantity.WIND, Quantity.GUST, Quantity.WIND_FROM, Quantity.TEMPERATURE);

    private final Hours hours;
    private final Site site;
    private final Findings findings;
    private final Remarks remarks;

    private Normal(Hours hours, Site site, Findings findings) {
        this.hours = hours;
        this.site = site;
        this.findings = findings;
        remarks = new Remarks(site.zone());
    }

    /** Refused where anything was found wrong; else what can be planned by, with remarks on what was made of it. */
    static ForecastReading of(Hours hours, Site site, @Nullable Instant issuedAt, Findings findings) {
        if (!findings.none()) return findings.refused();
        return new Normal(hours, site, findings).reading(issuedAt);
    }

    private ForecastReading reading(@Nullable Instant issuedAt) {
        List<PeriodChance> periods = hours.periods(); // what stands in for a chance tells nothing of how rain lasts
        StandIns standIns = new StandIns(hours, remarks);
        standIns.bridgeShortGaps();
        standIns.chancesFromAmounts();
        standIns.gustsFromMeans();
        standIns.humidity();
        List<ForecastHour> whole = whole();
        if (whole.isEmpty()) return nothing();
        sayWhereItEnds(whole.getLast().start().plus(Hours.HOUR));
        Contradictions.remark(whole, remarks);
        return new ForecastReading.Read(new ReadForecast(
                new Forecast(site.id(), whole), issuedAt, remarks.sentences(), within(whole, periods)));
    }

    private static List<PeriodChance> within(List<ForecastHour> whole, List<PeriodChance> periods) {
        Instant first = whole.getFirst().start();
        Instant end = whole.getLast().start().plus(Hours.HOUR);
        return periods.stream()
                .filter(period -> !period.from().isBefore(first)
                        && !period.from()
                                .plus(Hours.HOUR.multipliedBy(period.hours()))
                                .isAfter(end))
                .toList();
    }

    private List<ForecastHour> whole() {
        List<ForecastHour> whole = new ArrayList<>();
        for (Instant hour : hours.all()) {
            boolean follows =
                    whole.isEmpty() || whole.getLast().start().plus(Hours.HOUR).equals(hour);
            if (follows && missing(hour).isEmpty()) whole.add(hour(hour, whole));
            else if (!whole.isEmpty()) break;
        }
        return whole;
    }

    private List<Quantity> missing(Instant hour) {
        return NEEDED.stream().filter(one -> !hours.of(one).containsKey(hour)).toList();
    }

    private ForecastHour hour(Instant hour, List<ForecastHour> before) {
        Hours.Told chance = told(Quantity.CHANCE, hour);
        double mean = told(Quantity.WIND, hour).value();
        double gust = told(Quantity.GUST, hour).value();
        boolean begun = !before.isEmpty() && before.getLast().chanceFrom().equals(chance.from());
        return new ForecastHour(
                hour,
                told(Quantity.RAIN, hour).value(),
                chance.value() / 100,
                mean,
                remarks.gustAtLeast(hour, gust, mean),
                told(Quantity.WIND_FROM, hour).value(),
                told(Quantity.TEMPERATURE, hour).value(),
                told(Quantity.HUMIDITY, hour).value(),
                begun || before.isEmpty() ? chance.from() : hour);
    }

    private Hours.Told told(Quantity quantity, Instant hour) {
        return Objects.requireNonNull(hours.of(quantity).get(hour));
    }

    private void sayWhereItEnds(Instant end) {
        if (hours.all().last().isBefore(end)) return;
        String missing =
                String.join(", ", missing(end).stream().map(Quantity::words).toList());
        remarks.add(
                ForecastWords.ENDS.with(remarks.time(end), missing.isEmpty() ? ForecastWords.VALUES.with() : missing));
    }

    private ForecastReading nothing() {
        SequencedMap<Quantity, Integer> counts = new java.util.LinkedHashMap<>();
        NEEDED.forEach(one -> counts.put(one, size(hours.of(one))));
        String without = String.join(
                ", ",
                counts.entrySet().stream()
                        .filter(one -> one.getValue() == 0)
                        .map(one -> one.getKey().words())
                        .toList());
        findings.add(
                Json.ANSWER,
                without.isEmpty() ? ForecastWords.NO_WHOLE_HOUR.with() : ForecastWords.TELLS_NO.with(without),
                ForecastWords.WHOLE_HOUR.with());
        return findings.refused();
    }

    private static int size(NavigableMap<Instant, Hours.Told> told) {
        return told.size();
    }
}
