package drylap.raincall;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The rain call of a site: what stands open there, the forecast and the labour table make the question. */
public final class RainCalls {
    /** How much earlier the rain of the second answer comes. */
    public static final Duration EARLIER = Duration.ofMinutes(30);

    private RainCalls() {}

    /**
     * The answer of a site.
     *
     * @param open the openings that the call is about, in the folder's order
     * @param rainAt when the forecast has rain next, where it has any
     * @param until water is counted up to then
     * @param ifEarlier the same call with everything the sky does half an hour earlier
     */
    public record Call(
            Instant now,
            List<Opening> open,
            Optional<Instant> rainAt,
            Instant until,
            RainCall.Order order,
            RainCall.Order ifEarlier) {

        public Optional<Duration> untilRain() {
            return rainAt.map(at -> at.isBefore(now) ? Duration.ZERO : Duration.between(now, at));
        }

        /** Rain half an hour earlier would ask for other things, or for the same in another order. */
        public boolean changesIfEarlier() {
            return !acts(order).equals(acts(ifEarlier));
        }

        private static List<String> acts(RainCall.Order order) {
            return order.stops().stream()
                    .map(stop -> stop.act() + " " + stop.opening())
                    .toList();
        }
    }

    /** For a crew that has yet to walk to the first opening. */
    public static Call at(JobFolder folder, SiteId site, Instant now) {
        return at(folder, site, now, Optional.empty());
    }

    /**
     * @param standingAt the opening at which the crew is now: its course asks for no walk
     * @throws IllegalArgumentException where the folder has no such site
     */
    public static Call at(JobFolder folder, SiteId site, Instant now, Optional<OpeningId> standingAt) {
        return at(folder, site, now, standingAt, Optional.empty());
    }

    /**
     * For a crew that sees the rain come sooner or later than the forecast has it.
     *
     * @param standingAt the opening at which the crew is now: its course asks for no walk
     * @param seen in how long the rain comes; absent: as the forecast has it
     * @throws IllegalArgumentException where the folder has no such site
     */
    public static Call at(
            JobFolder folder, SiteId site, Instant now, Optional<OpeningId> standingAt, Optional<Duration> seen) {
        var scene = new Scene(folder, site, now, seen);
        var open = scene.open();
        var walks = Walking.between(folder, open, standingAt);
        return new Call(
                now,
                open,
                scene.rainAt(),
                scene.until(),
                RainCall.order(scene.question(open, Duration.ZERO), walks),
                RainCall.order(scene.question(open, EARLIER), walks));
    }
}
