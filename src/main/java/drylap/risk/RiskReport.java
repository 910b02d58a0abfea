package drylap.risk;

import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What weather, work and deliveries may still do to a plan, from so many trials with a seed. Chances are 0 to 1.
 *
 * @param openings every opening with an install in the plan, the one that most likely gets wet first
 * @param crewDays every planned crew-day, in order of dates
 * @param days every planned day, the one that costs the hand-overs most first
 * @param totals none in a report of some sites alone
 */
public record RiskReport(
        int trials,
        long seed,
        Instant from,
        List<Handover> handovers,
        List<OpeningRisk> openings,
        List<CrewDayRisk> crewDays,
        List<DayRisk> days,
        @Nullable Totals totals,
        List<ClimateUsed> climates) {
    /** Of openings and of days, what drives the risk. */
    public static final int DRIVERS = 3;

    public RiskReport {
        handovers = List.copyOf(handovers);
        openings = List.copyOf(openings);
        crewDays = List.copyOf(crewDays);
        days = List.copyOf(days);
        climates = List.copyOf(climates);
    }

    /**
     * When a facade is clad.
     *
     * @param inTime the chance that it is by the end of its due date; none where there is no date
     * @param unplanned claddings that the plan leaves out: with them it is later than all this
     * @param never in how many trials it was not clad within the weeks looked at
     * @param spread the chance of each day, those without any left out
     */
    public record Handover(
            FacadeId facade,
            @Nullable LocalDate due,
            Instant planned,
            DateFigure p50,
            DateFigure p80,
            DateFigure p90,
            @Nullable Figure inTime,
            int unplanned,
            int never,
            List<DayChance> spread) {
        public Handover {
            spread = List.copyOf(spread);
        }
    }

    public record DayChance(LocalDate day, double chance) {}

    /**
     * An opening while its install is under way.
     *
     * @param rainedOn the chance that it rains while it stands open
     * @param wet the chance that such rain is driven on to its wall
     * @param covers how often it is covered on average
     */
    public record OpeningRisk(
            OpeningId opening,
            FacadeId facade,
            int level,
            CrewId crew,
            Instant plannedStart,
            Figure rainedOn,
            Figure wet,
            double covers) {}

    /**
     * @param slips the chance that something planned for it is not done on it
     * @param sites where it is planned to be
     */
    public record CrewDayRisk(CrewId crew, LocalDate date, Figure slips, List<SiteId> sites) {
        public CrewDayRisk {
            sites = List.copyOf(sites);
        }
    }

    /**
     * A planned day.
     *
     * @param rains the chance of rain at a site while somebody is planned there
     * @param hoursLater by how much the hand-overs together come later in trials in which it does; none where it always or never does
     */
    public record DayRisk(
            LocalDate date, Figure rains, @Nullable Figure hoursLater) {
        /** What the day adds to how far the hand-overs scatter. */
        double weight() {
            return hoursLater == null ? 0 : rains.value() * (1 - rains.value()) * hoursLater.value();
        }
    }

    /**
     * What a trial brings over all sites.
     *
     * @param covers covers put on
     * @param wetOpenings openings that got wet while open
     * @param daysCome crew-days that the work takes
     */
    public record Totals(Figure covers, Figure wetOpenings, int daysPlanned, Figure daysCome) {}

    /** @param words where the weather beyond the forecast comes from */
    public record ClimateUsed(SiteId site, @Nullable Instant forecastEnd, String words) {}

    /** What of it someone with this reach may know: what is reckoned over sites that are not all theirs is left out. */
    RiskReport within(Reach reach, Collection<SiteId> all) {
        if (reach.coversAll(all)) return this;
        return new RiskReport(
                trials,
                seed,
                from,
                kept(handovers, one -> reach.covers(one.facade().site())),
                kept(openings, one -> reach.covers(one.facade().site())),
                kept(crewDays, one -> reach.coversAll(one.sites())),
                List.of(),
                null,
                kept(climates, one -> reach.covers(one.site())));
    }

    private static <T> List<T> kept(List<T> all, Predicate<T> which) {
        return all.stream().filter(which).toList();
    }
}
