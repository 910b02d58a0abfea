package drylap.windowschedule.files;

import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Sheet;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file as one sheet. It is UTF-8, with or without a byte order mark, or else Windows-1252; cells are parted by comma, semicolon or
 * tab, whichever parts its lines most alike.
 */
final class CsvSheet {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 50;
    private static final long ONE_MORE_LINE = 1_000_000;

    private CsvSheet() {}

    static List<Sheet> read(byte[] bytes, FileLimits limits) throws RefusedFile {
        for (byte one : bytes)
            if (one == 0) throw new RefusedFile("", ScheduleSaid.NO_TEXT.with(), ScheduleSaid.FILES.with());
        String text = text(bytes);
        char parted = parted(text);
        List<Sheet.Row> rows = new ArrayList<>();
        try (CSVParser parser = format(parted).parse(new StringReader(text))) {
            RowGuard guard = new RowGuard("", limits);
            for (CSVRecord record : parser) {
                List<String> cells = record.toList();
                // as an office program numbers it: a row with line ends in its cells is one row
                int number = Math.toIntExact(record.getRecordNumber());
                guard.check(number, cells);
                if (cells.stream().anyMatch(cell -> !cell.isBlank())) rows.add(new Sheet.Row(number, cells));
            }
        } catch (IOException | UncheckedIOException quotes) {
            throw new RefusedFile(
                    ScheduleSaid.ROW_OR_AFTER.with(
                            rows.isEmpty() ? 1 : rows.getLast().number() + 1),
                    ScheduleSaid.QUOTES.with(),
                    ScheduleSaid.PAIRED.with());
        }
        return rows.isEmpty() ? List.of() : List.of(new Sheet("CSV", rows));
    }

    private static String text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, WINDOWS);
        }
    }

    private static CSVFormat format(char parted) {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(parted)
                .setIgnoreEmptyLines(false)
                .get();
    }

    /** By how many lines, of the first, have as many of it as the line with most. */
    private static char parted(String text) {
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(one -> weight(text, one)))
                .orElse(',');
    }

    private static long weight(String text, char parted) {
        List<Long> counts =
                text.lines().limit(LOOKED_AT).map(line -> count(line, parted)).toList();
        long most = counts.stream().mapToLong(Long::longValue).max().orElse(0);
        return most == 0 ? 0 : counts.stream().filter(count -> count == most).count() * ONE_MORE_LINE + most;
    }

    /** Outside quoted cells; an inch mark within a cell quotes nothing. */
    private static long count(String line, char parted) {
        boolean quoted = false;
        boolean begins = true;
        long count = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean doubled = quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"';
            if (doubled) i++;
            else if (c == '"') quoted = begins && !quoted;
            if (c == parted && !quoted) count++;
            begins = c == parted;
        }
        return count;
    }
}
