package drylap.ui.drawn;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.speech.Speech;
import drylap.ui.drawn.Week.Block;
import drylap.ui.drawn.Week.Item;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts a crew's visits of one day together course by course, so that a day reads as a few blocks. */
final class BlocksOfDay {
    private record Pin(OpeningId opening, Task task, CrewId crew, Instant start) {
        static Pin of(Visit visit) {
            return new Pin(visit.opening(), visit.task(), visit.crew(), visit.start());
        }
    }

    /** A longer wait than this, for rain or for another trade, is shown as a gap. */
    private static final Duration LONGEST_GAP = Duration.ofMinutes(45);

    private final Speech say;
    private final FolderShown shown;
    private final Set<Pin> pinned;

    BlocksOfDay(Speech say, FolderShown shown) {
        this.say = say;
        this.shown = shown;
        pinned = shown.folder().published().stream()
                .filter(PublishedVisit::pinned)
                .map(one -> Pin.of(one.visit()))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** @param visits one crew's, of one day, by start */
    List<Block> of(List<Visit> visits, DayClock clock) {
        List<Block> blocks = new ArrayList<>();
        List<Visit> run = new ArrayList<>();
        for (Visit visit : visits) {
            if (!run.isEmpty() && !follows(run.getLast(), visit)) {
                blocks.add(block(run, clock));
                run.clear();
            }
            run.add(visit);
        }
        if (!run.isEmpty()) blocks.add(block(run, clock));
        return List.copyOf(blocks);
    }

    private boolean pinned(Visit visit) {
        return pinned.contains(Pin.of(visit));
    }

    private boolean follows(Visit before, Visit next) {
        return pinned(before) == pinned(next)
                && before.facade().equals(next.facade())
                && before.level() == next.level()
                && before.task() == next.task()
                && Duration.between(before.end(), next.start()).compareTo(LONGEST_GAP) <= 0;
    }

    private Block block(List<Visit> run, DayClock clock) {
        Visit first = run.getFirst();
        Visit last = run.getLast();
        return new Block(
                first.task().code(),
                first.facade().site().value(),
                shown.site(first.facade().site()).name(),
                first.facade().facade(),
                first.level(),
                clock.minute(first.start()),
                clock.minute(last.end()),
                say.clock(first.start(), clock.zone()),
                say.clock(last.end(), clock.zone()),
                run.stream().anyMatch(this::beyond),
                pinned(first),
                run.stream().map(visit -> item(visit, clock)).toList(),
                run.stream().skip(1).map(visit -> clock.minute(visit.start())).toList());
    }

    private Item item(Visit visit, DayClock clock) {
        return new Item(
                visit.opening().value(),
                say.clock(visit.start(), clock.zone()),
                say.clock(visit.end(), clock.zone()),
                clock.minute(visit.start()),
                clock.minute(visit.end()),
                say.it(Words.work(visit.task(), shown.opening(visit.opening()))),
                beyond(visit));
    }

    private boolean beyond(Visit visit) {
        return visit.end().isAfter(shown.weather(visit.facade().site()).forecastEnd());
    }
}
