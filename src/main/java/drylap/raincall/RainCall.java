package drylap.raincall;

import drylap.kernel.OpeningId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which of the open openings to close or cover, in what order, so that the least water is expected in. */
public final class RainCall {
    /** Up to so many openings the order is the best there is. */
    public static final int EXACT_UP_TO = 12;

    private RainCall() {}

    /**
     * One thing to do.
     *
     * @param from the minute from now at which work at the opening begins, walking and set-up done
     * @param until the minute at which it is shut
     * @param litres expected in before that, and behind a cover until the call's end
     */
    public record Stop(OpeningId opening, Act act, int from, int until, double litres) {}

    /**
     * What to do.
     *
     * @param left in what rain there is no time or use to go to these
     * @param litres expected in at all openings
     * @param litresIfNothingIsDone expected in at all openings where nobody does anything
     * @param litresIfLeft the same of each opening
     * @param exact no order of these openings and acts lets less in
     */
    public record Order(
            List<Stop> stops,
            List<OpeningId> left,
            double litres,
            double litresIfNothingIsDone,
            Map<OpeningId, Double> litresIfLeft,
            boolean exact) {}

    /**
     * For one crew that does one thing after the other. Where water is equal, fewer are left, then fewer covered rather than
     * closed, then the end is earlier.
     */
    public static Order order(List<OpenToRain> openings, Walks walks) {
        var rain = new Rain(openings, walks);
        var found = SearchedOrder.of(rain);
        boolean exact = openings.size() <= EXACT_UP_TO;
        var visits = exact ? ExactOrder.of(rain, found) : found;
        return told(rain, visits, exact);
    }

    private static Order told(Rain rain, List<Rain.Visit> visits, boolean exact) {
        var made = rain.made(visits);
        var stops = made.stream()
                .map(one -> new Stop(
                        rain.at(one.visit().opening()).opening(),
                        one.visit().act(),
                        one.from(),
                        one.until(),
                        Intake.litres(one.water())))
                .toList();
        var left = IntStream.range(0, rain.size())
                .filter(i -> made.stream().noneMatch(one -> one.visit().opening() == i))
                .mapToObj(i -> rain.at(i).opening())
                .toList();
        return new Order(
                stops,
                left,
                Intake.litres(rain.outcome(visits).water()),
                Intake.litres(rain.waterIfLeft()),
                rain.openings().stream()
                        .collect(Collectors.toMap(
                                OpenToRain::opening,
                                one -> Intake.litres(one.intake().all()))),
                exact);
    }
}
