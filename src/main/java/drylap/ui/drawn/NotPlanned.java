package drylap.ui.drawn;

import drylap.kernel.Task;
import drylap.planning.LeftOut;
import drylap.planning.Plan;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import drylap.sites.Opening;
import drylap.speech.Speech;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the plan leaves out, by reason, the commonest first; what merely waits for another task comes last. */
public record NotPlanned(List<Group> groups) {
    public record Group(String reason, String remedy, List<Row> rows) {}

    public record Row(String opening, String place, String task, String taskCode, String detail) {}

    public static NotPlanned of(Speech say, FolderShown shown) {
        Map<UnplannedReason, List<UnplannedTask>> byReason =
                shown.plan().map(Plan::unplanned).orElse(List.of()).stream()
                        .collect(Collectors.groupingBy(UnplannedTask::reason, TreeMap::new, Collectors.toList()));
        return new NotPlanned(byReason.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<UnplannedReason, List<UnplannedTask>> entry) ->
                                entry.getKey() == UnplannedReason.WAITS_FOR_TASK)
                        .thenComparingInt(entry -> -entry.getValue().size()))
                .map(entry -> group(say, shown, entry.getKey(), entry.getValue()))
                .toList());
    }

    public int count() {
        return groups.stream().mapToInt(group -> group.rows().size()).sum();
    }

    private static Group group(Speech say, FolderShown shown, UnplannedReason reason, List<UnplannedTask> tasks) {
        return new Group(
                say.it(reason(reason)),
                say.it(remedy(reason)),
                tasks.stream()
                        .sorted(Comparator.comparing(UnplannedTask::opening).thenComparing(UnplannedTask::task))
                        .map(task -> row(say, shown, task))
                        .toList());
    }

    private static Row row(Speech say, FolderShown shown, UnplannedTask unplanned) {
        Opening opening = shown.opening(unplanned.opening());
        Task task = unplanned.task();
        return new Row(
                opening.id().value(),
                say.it("{0}, level {1}", shown.title(opening.facade()), opening.level()),
                say.it(Words.task(task)),
                task.code(),
                say.it(LeftOut.read(unplanned.detail())));
    }

    static String reason(UnplannedReason reason) {
        return switch (reason) {
            case NO_CREW_TRAINED -> "No crew is trained for the method";
            case NO_DELIVERY -> "The window does not arrive in time";
            case NO_DRY_WINDOW -> "No dry window is long enough";
            case HORIZON_FULL -> "Every crew's days are full";
            case WAITS_FOR_TASK -> "Waits for another task";
            case APRON_LIMIT -> "The apron would stay exposed too long";
        };
    }

    private static String remedy(UnplannedReason reason) {
        return switch (reason) {
            case NO_CREW_TRAINED -> "Train or hire a crew for it, or ask the designer for another method.";
            case NO_DELIVERY -> "Move the delivery, or add days after it.";
            case NO_DRY_WINDOW -> "Wait for the weather; overtime helps where the window runs past the shift.";
            case HORIZON_FULL -> "Add days, overtime or a crew of this trade.";
            case WAITS_FOR_TASK -> "Plan the task that it waits for first.";
            case APRON_LIMIT -> "Bring the wrap forward, or the install back.";
        };
    }
}
