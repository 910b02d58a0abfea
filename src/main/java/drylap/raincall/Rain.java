package drylap.raincall;

import java.util.ArrayList;
import java.util.List;

/** The openings of one call and the walks between them; plays out what a crew would do. */
record Rain(List<OpenToRain> openings, Walks walks) {
    record Visit(int opening, Act act) {}

    /** Less water first, then fewer left open, then fewer covered only, then an earlier end. */
    record Outcome(long water, int left, int covered, int end) implements Comparable<Outcome> {
        @Override
        public int compareTo(Outcome other) {
            int order = Long.compare(water, other.water);
            if (order == 0) order = Integer.compare(left, other.left);
            if (order == 0) order = Integer.compare(covered, other.covered);
            return order != 0 ? order : Integer.compare(end, other.end);
        }
    }

    Rain {
        openings = List.copyOf(openings);
        if (walks.openings() != openings.size())
            throw new IllegalArgumentException(
                    "walks for %d openings, but there are %d".formatted(walks.openings(), openings.size()));
        if (openings.stream().map(one -> one.intake().minutes()).distinct().count() > 1)
            throw new IllegalArgumentException("the openings' rain is not told for the same stretch of time");
    }

    int size() {
        return openings.size();
    }

    OpenToRain at(int opening) {
        return openings.get(opening);
    }

    int ends(int from, int time, int opening, Act act) {
        return time + walks.minutes(from, opening) + at(opening).minutes(act);
    }

    long waterIfLeft() {
        return openings.stream().mapToLong(one -> one.intake().all()).sum();
    }

    /** Visits that come too late to help are not made; their openings are left. */
    Outcome outcome(List<Visit> visits) {
        var made = made(visits);
        long water = waterIfLeft();
        int covered = 0;
        for (var stop : made) {
            water += stop.water() - at(stop.visit().opening()).intake().all();
            if (stop.visit().act() == Act.COVER) covered++;
        }
        return new Outcome(
                water,
                size() - made.size(),
                covered,
                made.isEmpty() ? 0 : made.getLast().until());
    }

    record Made(Visit visit, int from, int until, long water) {}

    List<Made> made(List<Visit> visits) {
        List<Made> made = new ArrayList<>();
        int place = -1;
        int time = 0;
        for (var visit : visits) {
            var one = at(visit.opening());
            int until = ends(place, time, visit.opening(), visit.act());
            if (!one.works(visit.act(), until)) continue;
            made.add(new Made(visit, until - one.minutes(visit.act()), until, one.water(visit.act(), until)));
            place = visit.opening();
            time = until;
        }
        return made;
    }
}
