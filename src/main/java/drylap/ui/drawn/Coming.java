package drylap.ui.drawn;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Visit;
import drylap.progress.FinishedTask;
import drylap.progress.OpeningState;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** On which day openings become ready for the trade that follows, by the plan: that of the last visit before its own. */
final class Coming {
    private static final Set<Task> BEFORE = Set.of(Task.INSTALL, Task.TEST);

    private final Map<OpeningId, LocalDate> lastVisit;
    private final Speech say;
    private final ApronFacts facts;

    Coming(Speech say, ApronFacts facts) {
        this.say = say;
        this.facts = facts;
        lastVisit = facts.visits().stream()
                .filter(visit -> BEFORE.contains(visit.task()))
                .collect(Collectors.toMap(
                        Visit::opening, Visit::date, (one, other) -> one.isAfter(other) ? one : other));
    }

    /** One line a day, then what waits for its release, then what no plan has. */
    List<String> of(List<OpeningState> states) {
        var waiting =
                states.stream().filter(state -> !facts.hand(state).letGo()).toList();
        List<String> lines = new ArrayList<>(days(waiting));
        line(
                        say.it("done, waits for its release"),
                        waiting.stream().filter(this::finished).toList())
                .ifPresent(lines::add);
        line(
                        say.it("in no plan yet"),
                        waiting.stream()
                                .filter(state -> !finished(state) && !lastVisit.containsKey(id(state)))
                                .toList())
                .ifPresent(lines::add);
        return List.copyOf(lines);
    }

    /** @return in words, such as "ready on Tue 14 Apr by the plan" */
    String of(OpeningState state) {
        if (finished(state)) return say.it("done, waits for its release");
        LocalDate day = lastVisit.get(id(state));
        return day == null ? say.it("in no plan yet") : say.it("ready on {0} by the plan", say.day(day));
    }

    private List<String> days(List<OpeningState> waiting) {
        Map<LocalDate, List<OpeningState>> days = waiting.stream()
                .filter(state -> !finished(state) && lastVisit.containsKey(id(state)))
                .collect(groupingBy(state -> lastVisit.get(id(state)), TreeMap::new, toList()));
        return days.entrySet().stream()
                .map(day -> line(say.day(day.getKey()), day.getValue()).orElseThrow())
                .toList();
    }

    private boolean finished(OpeningState state) {
        var finished = state.finished().stream().map(FinishedTask::task).collect(Collectors.toSet());
        return state.opening().designedTasks().stream().filter(BEFORE::contains).allMatch(finished::contains);
    }

    private static Optional<String> line(String when, List<OpeningState> states) {
        return states.isEmpty()
                ? Optional.empty()
                : Optional.of("%s: %s"
                        .formatted(when, states.stream().map(s -> id(s).value()).collect(joining(", "))));
    }

    private static OpeningId id(OpeningState state) {
        return state.opening().id();
    }
}
