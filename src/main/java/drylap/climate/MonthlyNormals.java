package drylap.climate;

import drylap.kernel.SiteId;
import java.time.YearMonth;
import org.jspecify.annotations.Nullable;

/**
 * What a month brings on average, as weather services publish it.
 *
 * @param site none: of every site that has none of its own
 * @param month 1 to 12
 * @param rainMm the month's total
 * @param rainDays days on which it rains
 * @param coldDays days that are too cold to install all day; 0 where that is not told
 * @param gustDays days whose gusts shut installs all day; 0 where that is not told
 */
public record MonthlyNormals(
        @Nullable SiteId site, int month, double rainMm, double rainDays, double coldDays, double gustDays) {
    private static final int DAY = 24;
    /** Rain on every day is not rain in every hour. */
    private static final double SUREST = 0.99;
    /** An ordinary year's; a quarter of a day of February matters to nobody. */
    private static final int YEAR = 2025;

    public MonthlyNormals {
        if (month < 1 || month > 12) throw new IllegalArgumentException("month %d is outside 1..12".formatted(month));
        int days = days(month);
        within(rainDays, days, "days of rain");
        within(coldDays, days, "cold days");
        within(gustDays, days, "days of gusts");
        if (!(rainMm >= 0 && rainMm <= 5000))
            throw new IllegalArgumentException("%s mm of rain are outside 0..5000".formatted(rainMm));
    }

    /** Of rain alone. */
    public MonthlyNormals(@Nullable SiteId site, int month, double rainMm, double rainDays) {
        this(site, month, rainMm, rainDays, 0, 0);
    }

    MonthlyNormals at(SiteId other) {
        return new MonthlyNormals(other, month, rainMm, rainDays, coldDays, gustDays);
    }

    private static void within(double told, int days, String what) {
        if (!(told >= 0 && told <= days))
            throw new IllegalArgumentException("%s %s are outside 0..%d".formatted(told, what, days));
    }

    /** The chance of an hour that makes so many days have rain, where hours correlate so. */
    double wetHours(double rho) {
        return RainChain.hourly(Math.min(SUREST, rainDays / days(month)), DAY, rho);
    }

    /** What falls in a wet hour. */
    double millimetresAnHour(double rho) {
        double wet = wetHours(rho) * DAY * days(month);
        return wet > 0 ? rainMm / wet : 0;
    }

    /** The chance that cold or gusts take a whole day. */
    double lostDays() {
        double cold = coldDays / days(month);
        return cold + (1 - cold) * gustDays / days(month);
    }

    private static int days(int month) {
        return YearMonth.of(YEAR, month).lengthOfMonth();
    }
}
