package drylap.windowschedule;

import drylap.kernel.OpeningId;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A window schedule on its way into a job folder: the sheet, how it is understood, and what a person put right. Nothing of it is stored.
 *
 * @param columns where each field stands; a field that is not there is not in the schedule
 * @param edits cells as a person rewrote them
 * @param leftOut rows that are none of openings, such as sums
 * @param agreed openings at which work has begun and which are to change all the same
 */
public record Draft(
        String file,
        Sheet sheet,
        Header header,
        Map<Field, Integer> columns,
        Choices choices,
        Map<Cell, String> edits,
        Set<Integer> leftOut,
        Set<OpeningId> agreed) {
    /** @param row as the file counts it */
    public record Cell(int row, Field field) {}

    public Draft {
        columns = Map.copyOf(columns);
        edits = Map.copyOf(edits);
        leftOut = Set.copyOf(leftOut);
        agreed = Set.copyOf(agreed);
    }

    /** With the columns that the header names, and nothing put right yet. */
    public static Draft of(String file, Sheet sheet, Header header, Choices choices) {
        return new Draft(file, sheet, header, header.columns(), choices, Map.of(), Set.of(), Set.of());
    }

    /** The rows below the header; where the header stands again, as on each printed page, it is passed over. */
    public List<Sheet.Row> rows() {
        List<String> title = sheet.rows().get(header.below() - 1).cells();
        return sheet.rows().subList(header.below(), sheet.rows().size()).stream()
                .filter(row -> !row.cells().equals(title))
                .toList();
    }

    /** The cell as it counts: as a person rewrote it, or as it stands; blank where there is none. */
    public String text(Sheet.Row row, Field field) {
        String edited = edits.get(new Cell(row.number(), field));
        if (edited != null) return edited.strip();
        Integer column = columns.get(field);
        return column == null ? "" : row.cell(column).strip();
    }

    /** The letters of a field's column; blank where it has none. */
    String letters(Field field) {
        Integer column = columns.get(field);
        return column == null ? "" : Sheet.letters(column);
    }

    /** The unit of a field's bare numbers: what its title says, or else what a person said. */
    public @Nullable LengthUnit unit(Field field) {
        Integer column = columns.get(field);
        Optional<LengthUnit> titled = column == null ? Optional.empty() : header.unit(column);
        return titled.orElse(choices.unit());
    }

    /** What stands under elevation, each once, in the order of names. */
    public Set<String> elevations() {
        return names(Field.ELEVATION);
    }

    /**
     * What stands under level, each once, in the order of names, with the level that it says by itself; empty where all say theirs. Where
     * one does not, such as a ground floor, the numbers of the others may count from it, so all are asked for.
     */
    public SortedMap<String, OptionalInt> storeys() {
        SortedMap<String, OptionalInt> storeys = new TreeMap<>();
        names(Field.LEVEL).forEach(name -> storeys.put(name, LevelText.read(name)));
        return storeys.values().stream().allMatch(OptionalInt::isPresent) ? new TreeMap<>() : storeys;
    }

    private Set<String> names(Field field) {
        return taken().map(row -> text(row, field))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether some row names its method by a letter alone. */
    public boolean hasBareLetters() {
        return taken().anyMatch(
                        row -> MethodText.bareLetter(text(row, Field.METHOD)).isPresent());
    }

    /** The rows that are not left out. */
    Stream<Sheet.Row> taken() {
        return rows().stream().filter(row -> !leftOut.contains(row.number()));
    }

    public Draft withColumn(Field field, @Nullable Integer column) {
        Map<Field, Integer> now = new EnumMap<>(Field.class);
        now.putAll(columns);
        if (column == null) now.remove(field);
        else now.put(field, column);
        return new Draft(file, sheet, header, now, choices, edits, leftOut, agreed);
    }

    public Draft with(Choices now) {
        return new Draft(file, sheet, header, columns, now, edits, leftOut, agreed);
    }

    public Draft withEdit(Cell cell, String text) {
        Map<Cell, String> now = new HashMap<>(edits);
        now.put(cell, text);
        return new Draft(file, sheet, header, columns, choices, now, leftOut, agreed);
    }

    public Draft leavingOut(int row, boolean out) {
        return new Draft(file, sheet, header, columns, choices, edits, toggled(leftOut, row, out), agreed);
    }

    public Draft agreeing(OpeningId opening, boolean agree) {
        return new Draft(file, sheet, header, columns, choices, edits, leftOut, toggled(agreed, opening, agree));
    }

    private static <T> Set<T> toggled(Set<T> all, T one, boolean in) {
        Set<T> now = new HashSet<>(all);
        if (in) now.add(one);
        else now.remove(one);
        return now;
    }
}
