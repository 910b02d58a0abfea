package drylap.intake.csv;

import drylap.intake.FolderWords;
import drylap.intake.Problem;
import drylap.intake.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One CSV file of the contract. Rows are handed out one by one, so that a long file is not held twice. */
public final class Table {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();

    private final Header header;
    private final CsvBytes bytes;
    private final Problems problems;
    private boolean sound = true;
    private boolean complete = true;
    private int rows;

    public Table(Header header, byte[] bytes, Problems problems) {
        this.header = header;
        this.bytes = new CsvBytes(bytes);
        this.problems = problems;
    }

    /** A file that is not there; whoever asks for it says whether that is a problem. */
    public static Table absent(Header header, Problems problems) {
        return new Table(header, new byte[0], problems);
    }

    /** A file of which nothing could be read, and the problem has been told. */
    public static Table unreadable(Header header, Problems problems) {
        Table table = absent(header, problems);
        table.sound = false;
        table.complete = false;
        return table;
    }

    /** False once anything in the file is wrong: what is looked up in it would only repeat the trouble. */
    public boolean sound() {
        return sound;
    }

    /** Whether the file holds nothing at all, not even a header. */
    public boolean blank() {
        return bytes.blank();
    }

    public Problems problems() {
        return problems;
    }

    public Header header() {
        return header;
    }

    /** A problem of the whole file, or of one that was found once all rows were known. */
    public void report(int line, String column, String wrong, String value, String accepted) {
        sound = false;
        problems.add(new Problem(header.file(), line, column, wrong, value, accepted));
    }

    /** Whether every line could be split into its cells; else ids that are looked for may have stood in a lost line. */
    public boolean complete() {
        return complete && rows > 0;
    }

    /** How many rows there were below the header, right or wrong. */
    public int rows() {
        return rows;
    }

    /** Hands out every row that has the right number of cells. */
    public void each(Consumer<Row> reader) {
        int malformed = bytes.firstMalformed();
        if (malformed >= 0) {
            reportLoss(
                    bytes.lineOf(malformed),
                    FolderWords.NOT_UTF_8.with(),
                    FolderWords.BYTE.with(bytes.hex(malformed)),
                    FolderWords.UTF_8.with());
            return;
        }
        try (CSVParser parser = FORMAT.parse(bytes.reader())) {
            rows(parser, reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void rows(CSVParser parser, Consumer<Row> reader) {
        Map<String, Integer> places = new HashMap<>();
        Iterator<CSVRecord> records = parser.iterator();
        int line = 1;
        try {
            for (; records.hasNext(); line = next(parser)) {
                CSVRecord cells = records.next();
                if (empty(cells)) continue;
                if (places.isEmpty()) {
                    if (!headerRead(cells, line, places)) return;
                } else {
                    rows++;
                    row(cells, line, places, reader);
                }
            }
        } catch (UncheckedIOException e) {
            reportLoss(line, FolderWords.QUOTES.with(), "", FolderWords.PAIRED.with());
        }
    }

    private static int next(CSVParser parser) {
        return Math.toIntExact(parser.getCurrentLineNumber()) + 1;
    }

    private static boolean empty(CSVRecord cells) {
        return cells.size() == 1 && cells.get(0).isBlank();
    }

    private boolean headerRead(CSVRecord cells, int line, Map<String, Integer> places) {
        boolean good = true;
        for (int i = 0; i < cells.size(); i++) {
            String name = cells.get(i);
            if (!header.columns().contains(name)) good = wrongHeader(line, name, FolderWords.NO_COLUMN);
            else if (places.put(name, i) != null) good = wrongHeader(line, name, FolderWords.COLUMN_TWICE);
        }
        List<String> missing = header.required().stream()
                .filter(column -> !places.containsKey(column))
                .toList();
        for (String column : missing) good = wrongHeader(line, column, FolderWords.NOT_IN_HEADER);
        return good;
    }

    /** A problem after which lines, or all of them, are lost. */
    private void reportLoss(int line, String wrong, String value, String accepted) {
        complete = false;
        report(line, "", wrong, value, accepted);
    }

    private boolean wrongHeader(int line, String column, FolderWords wrong) {
        complete = false;
        report(
                line,
                column.isBlank() ? FolderWords.HEADER.with() : column,
                wrong.with(),
                "",
                FolderWords.THE_HEADER.with(header.text()));
        return false;
    }

    private void row(CSVRecord cells, int line, Map<String, Integer> places, Consumer<Row> reader) {
        if (cells.size() != places.size()) {
            String accepted = FolderWords.LINE_OF.with(places.size());
            reportLoss(line, FolderWords.CELLS.with(), Integer.toString(cells.size()), accepted);
            return;
        }
        reader.accept(new Row(this, line, cells, places));
    }
}
