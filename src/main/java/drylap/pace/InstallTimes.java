package drylap.pace;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Course;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.planning.LabourTable;
import drylap.progress.Mark;
import drylap.progress.MarkKind;
import drylap.sites.Opening;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The installs that the log times, and how many complete ones it does not, by reason. An install lasts from the acceptance of
 * its opening, or the crew's last tick in the same course, to the last tick of its block; what the crew ticked in between at
 * another opening counts there, and the break of the shift counts nowhere.
 */
record InstallTimes(List<TimedInstall> timed, Map<Doubt, Integer> leftOut) {
    /** A longer stretch for one step is a stop, not work. */
    private static final double LONGEST_STRETCH_MIN = 90;

    private static final double FARTHEST_RATIO = 4;

    InstallTimes {
        timed = List.copyOf(timed);
        leftOut = Map.copyOf(leftOut);
    }

    /**
     * @param openings as imported
     * @param log by opening, each in its order
     * @param labour as imported
     */
    static InstallTimes of(
            List<Opening> openings,
            Map<OpeningId, List<Mark>> log,
            List<Crew> crews,
            List<Shift> shifts,
            LabourTable labour) {
        Map<CrewId, ZoneId> zones = crews.stream().collect(Collectors.toMap(Crew::id, Crew::zone));
        var all = log.values().stream().flatMap(Collection::stream).toList();
        return new Reader(openings, log, new CrewClock(all, shifts, zones), labour).read();
    }

    private static final class Reader {
        private final List<Opening> openings;
        private final Map<OpeningId, Opening> byId;
        private final Map<OpeningId, List<Mark>> log;
        private final CrewClock clock;
        private final LabourTable labour;
        private final Map<Long, Set<OpeningId>> endsOfMoment = new HashMap<>();

        Reader(List<Opening> openings, Map<OpeningId, List<Mark>> log, CrewClock clock, LabourTable labour) {
            this.openings = openings;
            this.byId = openings.stream().collect(Collectors.toMap(Opening::id, opening -> opening));
            this.log = log;
            this.clock = clock;
            this.labour = labour;
        }

        InstallTimes read() {
            Map<OpeningId, List<Mark>> blocks = new HashMap<>();
            for (Opening opening : openings) block(opening).ifPresent(block -> blocks.put(opening.id(), block));
            blocks.forEach((id, block) -> endsOfMoment
                    .computeIfAbsent(clock.momentOf(block.getLast()), _ -> new HashSet<>())
                    .add(id));
            List<TimedInstall> timed = new ArrayList<>();
            Map<Doubt, Integer> leftOut = new EnumMap<>(Doubt.class);
            for (Opening opening : openings) {
                var block = blocks.get(opening.id());
                if (block == null) continue;
                var doubt = doubt(opening, block);
                if (doubt.isPresent()) leftOut.merge(doubt.get(), 1, Integer::sum);
                else timed.add(timed(opening, block));
            }
            return new InstallTimes(timed, leftOut);
        }

        /** The marks that say that its install is complete, in their time; none where it is not, or nothing of it is in the log. */
        private Optional<List<Mark>> block(Opening opening) {
            Set<String> codes = codes(opening);
            Map<String, Mark> done = new HashMap<>();
            for (Mark mark : log.getOrDefault(opening.id(), List.of())) {
                if (mark.kind() == MarkKind.UNDONE) done.remove(mark.line());
                else if (codes.contains(mark.line())) done.put(mark.line(), mark);
            }
            Set<String> before = opening.workList().doneBy(opening.done());
            boolean complete = codes.stream().allMatch(code -> done.containsKey(code) || before.contains(code));
            if (done.isEmpty() || !complete) return Optional.empty();
            return Optional.of(done.values().stream()
                    .sorted(Comparator.comparing(Mark::at).thenComparing(Mark::id))
                    .toList());
        }

        private static Set<String> codes(Opening opening) {
            return opening.workList().lines().stream()
                    .filter(line -> line.installBlock())
                    .map(line -> line.code())
                    .collect(Collectors.toSet());
        }

        private Optional<Doubt> doubt(Opening opening, List<Mark> block) {
            Set<String> codes = codes(opening);
            if (block.size() < codes.size()) return Optional.of(Doubt.BEGUN_BEFORE);
            if (log.getOrDefault(opening.id(), List.of()).stream()
                    .anyMatch(mark -> mark.kind() == MarkKind.UNDONE && codes.contains(mark.line())))
                return Optional.of(Doubt.UNDONE);
            if (block.getFirst().crew() == null
                    || block.stream().map(Mark::crew).distinct().count() > 1) return Optional.of(Doubt.CREWS);
            if (block.stream().map(clock::date).distinct().count() > 1) return Optional.of(Doubt.NIGHT);
            if (atOnce(opening, block)) return Optional.of(Doubt.AT_ONCE);
            return start(opening, block).isEmpty() ? Optional.of(Doubt.START) : doubtfulTime(opening, block);
        }

        private Optional<Doubt> doubtfulTime(Opening opening, List<Mark> block) {
            if (stretches(block).stream().anyMatch(stretch -> stretch > LONGEST_STRETCH_MIN))
                return Optional.of(Doubt.PAUSE);
            double ratio = timed(opening, block).minutes() / labour.installMinutes(opening);
            return ratio < 1 / FARTHEST_RATIO || ratio > FARTHEST_RATIO ? Optional.of(Doubt.FAR_OFF) : Optional.empty();
        }

        /** Most lines in one moment, or its end in the moment in which the crew ended another opening too. */
        private boolean atOnce(Opening opening, List<Mark> block) {
            long most =
                    block.stream()
                            .collect(Collectors.groupingBy(clock::momentOf, Collectors.counting()))
                            .values()
                            .stream()
                            .mapToLong(Long::longValue)
                            .max()
                            .orElse(0);
            return 2 * most > block.size()
                    || endsOfMoment
                                    .getOrDefault(clock.momentOf(block.getLast()), Set.of(opening.id()))
                                    .size()
                            > 1;
        }

        /** The crew's tick before the first of the block, where it is of that day and of this course. */
        private Optional<Mark> start(Opening opening, List<Mark> block) {
            Mark first = block.getFirst();
            return clock.before(first)
                    .filter(mark -> clock.date(mark).equals(clock.date(first)))
                    .filter(mark -> opening.course().equals(course(mark)));
        }

        private Course course(Mark mark) {
            return Objects.requireNonNull(byId.get(mark.opening())).course();
        }

        private List<Double> stretches(List<Mark> block) {
            return block.stream()
                    .map(mark -> clock.before(mark)
                            .map(last -> clock.minutes(last, mark))
                            .orElse(0.0))
                    .toList();
        }

        private TimedInstall timed(Opening opening, List<Mark> block) {
            Mark last = block.getLast();
            var cell = new Cell(Objects.requireNonNull(last.crew()), opening.method(), SizeClass.of(opening));
            double minutes =
                    stretches(block).stream().mapToDouble(Double::doubleValue).sum();
            return new TimedInstall(opening.id(), cell, clock.date(last), minutes, labour.installMinutes(opening));
        }
    }
}
