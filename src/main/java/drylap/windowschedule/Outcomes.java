package drylap.windowschedule;

import drylap.assembly.Approach;
import drylap.assembly.SecondLayer;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.windowschedule.OpeningOutcome.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Works out what a draft becomes; nothing is changed by it, so it may be asked at every key. */
public final class Outcomes {
    private final Draft draft;
    private final JobFolder folder;
    private final Differences differences;
    private final List<Opening> ofSite;
    private final Map<OpeningId, SiteId> elsewhere;
    private final Map<OpeningId, Integer> rowOf = new HashMap<>();

    private Outcomes(Draft draft, JobFolder folder, Set<OpeningId> begun) {
        this.draft = draft;
        this.folder = folder;
        differences = new Differences(begun, draft.agreed());
        SiteId site = draft.choices().site();
        ofSite = folder.openings().stream()
                .filter(opening -> opening.facade().site().equals(site))
                .toList();
        elsewhere = folder.openings().stream()
                .filter(opening -> !opening.facade().site().equals(site))
                .collect(Collectors.toMap(
                        Opening::id, opening -> opening.facade().site()));
    }

    /** @param begun openings at which anything was ever marked */
    public static Outcome of(Draft draft, JobFolder folder, Set<OpeningId> begun) {
        return new Outcomes(draft, folder, begun).outcome();
    }

    private Outcome outcome() {
        Map<Integer, RowReader.Reading> readings = new LinkedHashMap<>();
        var reader = new RowReader(draft, folder);
        draft.taken().forEach(row -> readings.put(row.number(), reader.read(row)));
        var naming = new Naming(draft.choices().prefix(), ofSite, List.copyOf(readings.values()));
        List<RowOutcome> rows = draft.rows().stream()
                .map(row -> {
                    var reading = readings.get(row.number());
                    return reading == null
                            ? new RowOutcome(row, true, List.of(), List.of())
                            : outcome(row, reading, naming);
                })
                .toList();
        return new Outcome(rows, lacking(rows), missing());
    }

    private RowOutcome outcome(Sheet.Row row, RowReader.Reading reading, Naming naming) {
        List<CellFault> faults = new ArrayList<>(reading.faults());
        List<OpeningOutcome> openings = new ArrayList<>();
        reading.row().ifPresent(read -> {
            for (Naming.Named named : naming.of(read.number())) {
                String clash = clash(named.id(), read.number());
                if (clash.isEmpty()) openings.add(outcome(named, read, reading.stoodIn()));
                else faults.add(fault(read, Field.MARK, clash, ScheduleSaid.OWN_MARK.with()));
            }
            unserved(openings)
                    .ifPresent(wrong -> faults.add(fault(read, Field.METHOD, wrong, ScheduleSaid.WITH_MINUTES.with())));
        });
        return new RowOutcome(row, false, faults, faults.isEmpty() ? openings : List.of());
    }

    private CellFault fault(ReadRow read, Field field, String wrong, String accepted) {
        String value = field == Field.MARK ? read.mark() : read.method().code();
        return new CellFault(read.number(), field, draft.letters(field), wrong, value, accepted);
    }

    /** What an opening needs that the labour table has no minutes for. */
    private Optional<String> unserved(List<OpeningOutcome> openings) {
        return openings.stream()
                .map(OpeningOutcome::becomes)
                .flatMap(one ->
                        one.tasks().stream().filter(task -> !folder.labour().serves(task, one.method())))
                .findFirst()
                .map(task -> ScheduleSaid.NO_MINUTES.with(task.code()));
    }

    /** Why an opening may not have this name; empty where it may. */
    private String clash(OpeningId id, int row) {
        SiteId other = elsewhere.get(id);
        if (other != null) return ScheduleSaid.AT_OTHER_SITE.with(id, other);
        Integer before = rowOf.putIfAbsent(id, row);
        return before == null || before == row ? "" : ScheduleSaid.BY_OTHER_ROW.with(id, before);
    }

    private OpeningOutcome outcome(Naming.Named named, ReadRow row, Set<Field> stoodIn) {
        if (named.now() != null) return differences.of(named.now(), row, stoodIn);
        return new OpeningOutcome(Kind.NEW, null, fresh(named.id(), row), List.of(), row.note());
    }

    /** What is lacking is told apart; the harmless values here are never taken in. */
    private Opening fresh(OpeningId id, ReadRow row) {
        var standIns = draft.choices().standIns();
        return new Opening(
                id,
                row.facade(),
                row.level(),
                row.widthMm(),
                row.heightMm(),
                row.frame(),
                row.method(),
                standIns.approach() == null ? Approach.DRAINAGE : standIns.approach(),
                standIns.secondLayer() == null ? SecondLayer.NONE : standIns.secondLayer(),
                standIns.deliveredOn() == null ? LocalDate.EPOCH : standIns.deliveredOn(),
                standIns.waterTest(),
                standIns.priority(),
                0,
                null);
    }

    private List<String> lacking(List<RowOutcome> rows) {
        List<String> lacking = new ArrayList<>();
        if (draft.columns().get(Field.MARK) == null) lacking.add(ScheduleSaid.CHOOSE_MARKS.with());
        boolean anyNew = rows.stream().flatMap(row -> row.openings().stream()).anyMatch(one -> one.kind() == Kind.NEW);
        if (!anyNew) return lacking;
        var standIns = draft.choices().standIns();
        if (standIns.approach() == null) lacking.add(ScheduleSaid.CHOOSE_APPROACH.with());
        if (standIns.secondLayer() == null) lacking.add(ScheduleSaid.CHOOSE_LAYER.with());
        if (standIns.deliveredOn() == null) lacking.add(ScheduleSaid.CHOOSE_DATE.with());
        return lacking;
    }

    private List<Opening> missing() {
        return ofSite.stream()
                .filter(opening -> !rowOf.containsKey(opening.id()))
                .toList();
    }
}
