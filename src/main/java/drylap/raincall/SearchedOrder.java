package drylap.raincall;

import drylap.raincall.Rain.Outcome;
import drylap.raincall.Rain.Visit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A good order for more openings than can be searched through: begins with the most water per minute of work (Smith 1956) and
 * with the shortest work, all covered or all closed, then with shuffled orders, always the same ones, and takes any move of one
 * opening or of a run of up to three that helps, until none does.
 */
final class SearchedOrder {
    private static final int SHUFFLES = 24;
    private static final int LONGEST_RUN = 3;

    private final Rain rain;
    private List<Visit> best = List.of();
    private Outcome least;

    private SearchedOrder(Rain rain) {
        this.rain = rain;
        least = rain.outcome(best);
    }

    static List<Visit> of(Rain rain) {
        var search = new SearchedOrder(rain);
        for (var act : Act.values()) {
            search.improve(search.start(act, search::minutesPerWater));
            search.improve(search.start(act, search::minutes));
        }
        var random = new Random(rain.size());
        for (int i = 0; i < SHUFFLES; i++) search.improve(search.shuffled(random));
        return search.best.stream().filter(search.isMade()).toList();
    }

    private Predicate<Visit> isMade() {
        var made = rain.made(best).stream().map(Rain.Made::visit).toList();
        return made::contains;
    }

    private List<Visit> start(Act act, ToDoubleFunction<Visit> first) {
        return IntStream.range(0, rain.size())
                .mapToObj(i -> new Visit(i, act))
                .sorted(Comparator.comparingDouble(first))
                .toList();
    }

    private List<Visit> shuffled(Random random) {
        var order = new ArrayList<>(IntStream.range(0, rain.size())
                .mapToObj(i -> new Visit(i, random.nextBoolean() ? Act.CLOSE : Act.COVER))
                .toList());
        Collections.shuffle(order, random);
        return order;
    }

    private double minutesPerWater(Visit visit) {
        return minutes(visit) / (1.0 + rain.at(visit.opening()).intake().all());
    }

    private int minutes(Visit visit) {
        return rain.walks().least(visit.opening()) + rain.at(visit.opening()).minutes(visit.act());
    }

    private void improve(List<Visit> start) {
        var now = new ArrayList<>(start);
        var outcome = rain.outcome(now);
        while (true) {
            var before = outcome;
            for (int i = 0; i < now.size(); i++) outcome = improve(now, i, outcome);
            for (int length = 2; length <= LONGEST_RUN; length++)
                for (int i = 0; i + length <= now.size(); i++) outcome = moveRun(now, i, length, outcome);
            if (outcome.equals(before)) break;
        }
        if (outcome.compareTo(least) >= 0) return;
        least = outcome;
        best = now;
    }

    /** Takes the best new place and act for one visit, where there is a better. */
    private Outcome improve(List<Visit> now, int index, Outcome outcome) {
        var was = now.remove(index);
        int bestPlace = index;
        var bestVisit = was;
        for (var act : Act.values())
            for (int place = 0; place <= now.size(); place++) {
                var visit = new Visit(was.opening(), act);
                now.add(place, visit);
                var other = rain.outcome(now);
                now.remove(place);
                if (other.compareTo(outcome) >= 0) continue;
                outcome = other;
                bestPlace = place;
                bestVisit = visit;
            }
        now.add(bestPlace, bestVisit);
        return outcome;
    }

    private Outcome moveRun(List<Visit> now, int index, int length, Outcome outcome) {
        List<Visit> run = List.copyOf(now.subList(index, index + length));
        now.subList(index, index + length).clear();
        int bestPlace = index;
        for (int place = 0; place <= now.size(); place++) {
            now.addAll(place, run);
            var other = rain.outcome(now);
            now.subList(place, place + length).clear();
            if (other.compareTo(outcome) >= 0) continue;
            outcome = other;
            bestPlace = place;
        }
        now.addAll(bestPlace, run);
        return outcome;
    }
}
