package drylap.ui.drawn;

import drylap.kernel.Trade;
import drylap.season.Estimate;
import drylap.season.Season;
import drylap.season.SiteOutlook;
import drylap.season.SiteOutlook.MonthGain;
import drylap.season.SiteOutlook.OneMore;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a site's season comes to, in words. */
public final class SeasonWords {
    /** What is left out of the reckoning; said wherever it is shown. */
    public static final String LEFT_OUT =
            "Left out: water tests and curing, changes of facade and level, limits of aprons and bare walls, absences and "
                    + "holidays, deliveries that come late, work that takes longer than its labour row, and years that are "
                    + "wet or cold as a whole. It shows what is short; it promises no day.";

    /** When one more crew pays. */
    public static final String PAYS =
            "One more crew pays from the first month in which, working here that month alone, it adds %.0f of 100 or more to "
                            .formatted(Season.PAYS * 100)
                    + "the chance that every facade with a due date is through in time.";

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

    private SeasonWords() {}

    /** Where the weather comes from; an assumption has a mark of its own on the page. */
    public static String climate(SiteOutlook site, ZoneId zone) {
        Instant end = site.forecastEnd();
        return "%s, %s."
                .formatted(
                        end == null || !end.isAfter(site.from())
                                ? "No forecast is known: climate only from the start"
                                : "The forecast ends " + Words.moment(end, zone) + "; beyond it climate only",
                        site.climate());
    }

    public static String crews(SiteOutlook site) {
        return "Reckoned with %s, as their last seven days of shifts go on; %,d drawn years, seed %d; \u00b1 is one standard error."
                .formatted(
                        site.crews().entrySet().stream()
                                .sorted(java.util.Map.Entry.comparingByKey())
                                .map(entry -> String.format(
                                        Locale.ROOT,
                                        "%.1f %s",
                                        entry.getValue(),
                                        trade(entry.getKey()) + (entry.getValue() == 1 ? " crew" : " crews")))
                                .collect(Collectors.joining(", ")),
                        site.years(),
                        site.seed());
    }

    public static String inTime(SiteOutlook site) {
        Estimate chance = site.inTime();
        return chance == null
                ? "No facade of this site has a due date."
                : "Every facade with a due date in time: %s, %s.".formatted(likely(chance), chance(chance));
    }

    /** What one more crew would change, a sentence each. */
    public static List<String> oneMore(OneMore more) {
        List<String> said = new ArrayList<>();
        said.add("The last facade is through %s days earlier.".formatted(figure(more.daysEarlier())));
        if (more.gained() != null)
            said.add("The chance that all is in time rises by %s of 100."
                    .formatted(figure(new Estimate(
                            100 * more.gained().value(), 100 * more.gained().error()))));
        said.add("%s crew-days more (%s by the rules' weights); late hand-over saved: %s."
                .formatted(
                        figure(more.crewDays()),
                        Words.number(Math.round(more.crewDayCost())),
                        Words.number(Math.round(more.lateSaved()))));
        if (more.gained() != null) said.add(pays(more));
        return said;
    }

    private static String pays(OneMore more) {
        YearMonth month = more.pays();
        if (month != null) return "It pays from %s.".formatted(MONTH.format(month));
        return more.months().stream()
                .max(java.util.Comparator.comparingDouble(
                        (MonthGain one) -> one.gained().value()))
                .filter(one -> one.gained().value() > 0)
                .map(one -> "It pays in no month; most it adds in %s, %s of 100."
                        .formatted(
                                MONTH.format(one.month()), figure(one.gained().value() * 100)))
                .orElse("It pays in no month.");
    }

    public static String title(OneMore more) {
        return "One more %s crew".formatted(trade(more.trade()));
    }

    static String trade(Trade trade) {
        return switch (trade) {
            case WINDOW -> "window";
            case TESTER -> "test";
            case WRAP -> "wrap";
            case SIDING -> "siding";
        };
    }

    static String chance(@Nullable Estimate chance) {
        return chance == null
                ? ""
                : String.format(Locale.ROOT, "%.0f \u00b1 %.1f of 100", 100 * chance.value(), 100 * chance.error());
    }

    /** The words say no more than the number. */
    static String likely(Estimate chance) {
        double p = chance.value();
        if (p >= 0.95) return "almost certain";
        if (p >= 0.8) return "likely";
        if (p >= 0.6) return "more likely than not";
        if (p >= 0.4) return "as likely as not";
        if (p >= 0.2) return "unlikely";
        return p >= 0.05 ? "very unlikely" : "hardly possible";
    }

    private static String figure(Estimate figure) {
        return "%s \u00b1 %s".formatted(figure(figure.value()), figure(figure.error()));
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value + 0.0).replace("-0.0", "0.0");
    }
}
