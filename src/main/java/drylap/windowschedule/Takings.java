package drylap.windowschedule;

import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.planning.ScheduleTaking;
import drylap.sites.Opening;
import drylap.sites.OpeningNote;
import drylap.windowschedule.OpeningOutcome.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What an outcome without faults does to a folder: to a stored one, or to one that is held as files. */
public final class Takings {
    private Takings() {}

    /** @throws IllegalArgumentException where the outcome is not sound */
    public static ScheduleTaking of(Draft draft, Outcome outcome) {
        if (!outcome.sound()) throw new IllegalArgumentException("a schedule with faults is not taken in");
        List<OpeningOutcome> changed = outcome.openings(Kind.CHANGED);
        Map<OpeningId, OpeningNote> notes = new LinkedHashMap<>();
        outcome.openings().forEach(one -> notes.put(one.id(), one.note()));
        return new ScheduleTaking(
                draft.choices().site(),
                draft.file(),
                added(outcome),
                changed.stream().map(one -> Objects.requireNonNull(one.now())).toList(),
                changed.stream().map(OpeningOutcome::becomes).toList(),
                List.copyOf(draft.agreed()),
                notes);
    }

    /** The folder with it, for folders that are files; what the schedule says beyond the design has no place in them. */
    public static JobFolder over(JobFolder folder, Outcome outcome) {
        Map<OpeningId, Opening> changed = new HashMap<>();
        outcome.openings(Kind.CHANGED).forEach(one -> changed.put(one.id(), one.becomes()));
        List<Opening> all = new ArrayList<>();
        folder.openings().forEach(opening -> all.add(changed.getOrDefault(opening.id(), opening)));
        all.addAll(added(outcome));
        return folder.withOpenings(all);
    }

    /** Wall by wall and level by level, along the wall where the schedule says where, else in its own order. */
    private static List<Opening> added(Outcome outcome) {
        return outcome.openings(Kind.NEW).stream()
                .sorted(Comparator.comparing(
                                (OpeningOutcome one) -> one.becomes().course())
                        .thenComparing(one -> one.note().xMm(), Comparator.nullsLast(Comparator.naturalOrder())))
                .map(OpeningOutcome::becomes)
                .toList();
    }
}
