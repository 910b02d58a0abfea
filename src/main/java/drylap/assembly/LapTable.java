package drylap.assembly;

import drylap.kernel.Coded;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The rows of {@code laps.csv}: the one place where laps are written down. */
final class LapTable {
    private static final String FILE = "laps.csv";
    private static final List<Row> ROWS = read();

    private record Row(Lap lap, String methods, String approaches, String secondLayers) {
        boolean appliesTo(Variant variant) {
            return names(methods, variant.method())
                    && names(approaches, variant.approach())
                    && names(secondLayers, variant.secondLayer());
        }

        private static boolean names(String cell, Coded value) {
            return cell.equals("*") || Arrays.asList(cell.split(" ")).contains(value.code());
        }
    }

    private LapTable() {}

    static List<Lap> of(Variant variant) {
        return ROWS.stream().filter(row -> row.appliesTo(variant)).map(Row::lap).toList();
    }

    private static List<Row> read() {
        try (var in = Objects.requireNonNull(LapTable.class.getResourceAsStream(FILE), FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> row(line.split(",")))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Row row(String[] cells) {
        var lap = new Lap(
                value(Layer.class, cells[0]),
                value(Layer.class, cells[1]),
                value(Lap.Kind.class, cells[2]),
                value(Lap.Order.class, cells[3]));
        return new Row(lap, cells[4], cells[5], cells[6]);
    }

    private static <E extends Enum<E> & Coded> E value(Class<E> type, String code) {
        return Coded.parse(type, code)
                .orElseThrow(() ->
                        new IllegalStateException("%s: '%s' is none of %s".formatted(FILE, code, Coded.codes(type))));
    }
}
