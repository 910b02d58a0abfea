package drylap.season;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the next twelve months bring a site's work, over drawn years.
 *
 * @param climate where the weather beyond the forecast comes from, in words
 * @param assumed that is an assumption, for some month at least
 * @param forecastEnd where the climate begins; none: from the start
 * @param crews how many of each trade are reckoned with, a share where they work at other sites too
 * @param inTime the chance that every facade with a due date is through by it; none where no facade has one
 * @param oneMore what one more crew changes, by trade with work left
 */
public record SiteOutlook(
        SiteId site,
        Instant from,
        int years,
        long seed,
        String climate,
        boolean assumed,
        @Nullable Instant forecastEnd,
        Map<Trade, Double> crews,
        @Nullable Estimate inTime,
        List<FacadeOutlook> facades,
        List<OneMore> oneMore) {
    public SiteOutlook {
        crews = Map.copyOf(crews);
        facades = List.copyOf(facades);
        oneMore = List.copyOf(oneMore);
    }

    /**
     * A facade's season.
     *
     * @param installLeft crew-hours of work at the start, as the labour table has them; so with wrap and clad
     * @param least hours that a dry stretch must have to count for an install
     * @param through5 the day by whose end all work is done in 5 of 10 years; none: not within the months looked at
     * @param inTime the chance to be through by the due date; none where there is no such date
     */
    public record FacadeOutlook(
            FacadeId facade,
            @Nullable LocalDate due,
            double installLeft,
            double wrapLeft,
            double cladLeft,
            double least,
            @Nullable LocalDate through5,
            @Nullable LocalDate through8,
            @Nullable LocalDate through9,
            @Nullable Estimate inTime,
            List<Month> months) {
        public FacadeOutlook {
            months = List.copyOf(months);
        }

        public double left() {
            return installLeft + wrapLeft + cladLeft;
        }
    }

    /**
     * A month of one facade; hours are those of one window crew, but work is in crew-hours.
     *
     * @param days on which window crews work
     * @param light hours of daylight within their shifts
     * @param usable of these, the mean of those in which an install can be done
     * @param usable10 in 1 of 10 years it is no more; so with 5 and 9
     * @param installLeft install work that is left at the month's start, on average; so with all work
     */
    public record Month(
            YearMonth month,
            int days,
            double light,
            Estimate usable,
            double usable10,
            double usable50,
            double usable90,
            double installLeft,
            double workLeft) {}

    /**
     * What one more crew of a trade changes, if it works here from the start until the trade is through.
     *
     * @param gained what that adds to the chance that all is in time; none where no facade has a due date
     * @param daysEarlier that the last facade is through; a year that is not through counts as through at its end
     * @param crewDays that the trade then works more, or less where below 0
     * @param crewDayCost these by weight_crew_days
     * @param lateSaved hours of late hand-over that it saves, days counted whole, by weight_late_handover
     * @param pays the first month in which one more crew for that month alone adds {@link Season#PAYS} to the chance
     */
    public record OneMore(
            Trade trade,
            @Nullable Estimate gained,
            Estimate daysEarlier,
            Estimate crewDays,
            double crewDayCost,
            double lateSaved,
            @Nullable YearMonth pays,
            List<MonthGain> months,
            List<FacadeGain> facades) {
        public OneMore {
            months = List.copyOf(months);
            facades = List.copyOf(facades);
        }
    }

    /** What one more crew in that month alone adds to the chance that all is in time. */
    public record MonthGain(YearMonth month, Estimate gained) {}

    /** @param gained what it adds to the facade's chance to be in time; none where it has no due date */
    public record FacadeGain(FacadeId facade, @Nullable Estimate gained, Estimate daysEarlier) {}
}
