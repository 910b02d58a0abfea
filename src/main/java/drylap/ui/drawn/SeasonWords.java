package drylap.ui.drawn;

import drylap.climate.ClimateSource;
import drylap.kernel.Trade;
import drylap.season.Estimate;
import drylap.season.Season;
import drylap.season.SiteOutlook;
import drylap.season.SiteOutlook.MonthGain;
import drylap.season.SiteOutlook.OneMore;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
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
    public static String pays(Speech say) {
        return say.it(
                "One more crew pays from the first month in which, working here that month alone, it adds {0} of 100 or more to "
                        + "the chance that every facade with a due date is through in time.",
                Math.round(Season.PAYS * 100));
    }

    private SeasonWords() {}

    /** Where the weather comes from; an assumption has a mark of its own on the page. */
    public static String climate(Speech say, SiteOutlook site, ZoneId zone) {
        Instant end = site.forecastEnd();
        Saying whence = ClimateSource.read(site.climate());
        return end == null || !end.isAfter(site.from())
                ? say.it("No forecast is known: climate only from the start, {0}.", whence)
                : say.it("The forecast ends {0}; beyond it climate only, {1}.", say.moment(end, zone), whence);
    }

    public static String crews(Speech say, SiteOutlook site) {
        return say.it(
                "Reckoned with {0}, as their last seven days of shifts go on; {1} drawn years, seed {2}; \u00b1 is one standard error.",
                site.crews().entrySet().stream()
                        .sorted(java.util.Map.Entry.comparingByKey())
                        .map(entry -> crews(say, entry.getKey(), entry.getValue()))
                        .collect(Collectors.joining(", ")),
                String.format(Locale.ROOT, "%,d", site.years()),
                site.seed());
    }

    private static String crews(Speech say, Trade trade, double many) {
        boolean one = many == 1;
        String number = figure(many);
        return switch (trade) {
            case WINDOW -> say.it(one ? "{0} window crew" : "{0} window crews", number);
            case TESTER -> say.it(one ? "{0} test crew" : "{0} test crews", number);
            case WRAP -> say.it(one ? "{0} wrap crew" : "{0} wrap crews", number);
            case SIDING -> say.it(one ? "{0} siding crew" : "{0} siding crews", number);
        };
    }

    public static String inTime(Speech say, SiteOutlook site) {
        Estimate chance = site.inTime();
        return chance == null
                ? say.it("No facade of this site has a due date.")
                : say.it("Every facade with a due date in time: {0}, {1}.", likely(say, chance), chance(say, chance));
    }

    /** What one more crew would change, a sentence each. */
    public static List<String> oneMore(Speech say, OneMore more) {
        List<String> said = new ArrayList<>();
        said.add(say.it("The last facade is through {0} days earlier.", figure(more.daysEarlier())));
        if (more.gained() != null)
            said.add(say.it(
                    "The chance that all is in time rises by {0} of 100.",
                    figure(new Estimate(
                            100 * more.gained().value(), 100 * more.gained().error()))));
        said.add(say.it(
                "{0} crew-days more ({1} by the rules' weights); late hand-over saved: {2}.",
                figure(more.crewDays()),
                Words.number(Math.round(more.crewDayCost())),
                Words.number(Math.round(more.lateSaved()))));
        if (more.gained() != null) said.add(pays(say, more));
        return said;
    }

    private static String pays(Speech say, OneMore more) {
        YearMonth month = more.pays();
        if (month != null) return say.it("It pays from {0}.", say.month(month));
        return more.months().stream()
                .max(java.util.Comparator.comparingDouble(
                        (MonthGain one) -> one.gained().value()))
                .filter(one -> one.gained().value() > 0)
                .map(one -> say.it(
                        "It pays in no month; most it adds in {0}, {1} of 100.",
                        say.month(one.month()), figure(one.gained().value() * 100)))
                .orElseGet(() -> say.it("It pays in no month."));
    }

    public static String title(Speech say, OneMore more) {
        return switch (more.trade()) {
            case WINDOW -> say.it("One more window crew");
            case TESTER -> say.it("One more test crew");
            case WRAP -> say.it("One more wrap crew");
            case SIDING -> say.it("One more siding crew");
        };
    }

    static String chance(Speech say, @Nullable Estimate chance) {
        return chance == null
                ? ""
                : say.it(
                        "{0} \u00b1 {1} of 100",
                        String.format(Locale.ROOT, "%.0f", 100 * chance.value()),
                        String.format(Locale.ROOT, "%.1f", 100 * chance.error()));
    }

    /** The words say no more than the number. */
    static String likely(Speech say, Estimate chance) {
        double p = chance.value();
        if (p >= 0.95) return say.it("almost certain");
        if (p >= 0.8) return say.it("likely");
        if (p >= 0.6) return say.it("more likely than not");
        if (p >= 0.4) return say.it("as likely as not");
        if (p >= 0.2) return say.it("unlikely");
        return say.it(p >= 0.05 ? "very unlikely" : "hardly possible");
    }

    private static String figure(Estimate figure) {
        return "%s \u00b1 %s".formatted(figure(figure.value()), figure(figure.error()));
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value + 0.0).replace("-0.0", "0.0");
    }
}
