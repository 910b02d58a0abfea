package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;

/** The table of OWASP ASVS 4.0.3 says what it proves by what, and all of that is there. */
class AsvsTableTests {
    private static final Path TABLE = Path.of("src/docs/asvs.csv");
    private static final Path WORDS = Path.of("src/docs/security.md");
    private static final Pattern REQUIREMENT = Pattern.compile("[1-9]\\d?\\.[1-9]\\d?\\.[1-9]\\d?");
    /** Fewer letters are no reason. */
    private static final int SHORTEST_REASON = 15;

    /**
     * How many requirements of levels 1 and 2 each chapter has that was gone through whole, counted in the standard's own list
     * (github.com/OWASP/ASVS, 4.0/docs_en, version 4.0.3), those that it names deleted left out.
     */
    private static final Map<Integer, Long> WHOLE = new TreeMap<>(Map.ofEntries(
            Map.entry(2, 53L),
            Map.entry(3, 18L),
            Map.entry(4, 9L),
            Map.entry(5, 30L),
            Map.entry(7, 12L),
            Map.entry(8, 15L),
            Map.entry(9, 7L),
            Map.entry(10, 5L),
            Map.entry(11, 8L),
            Map.entry(12, 15L),
            Map.entry(13, 13L),
            Map.entry(14, 23L)));

    private final List<Row> rows = read();

    private record Row(String requirement, int level, String applies, List<String> proof, String state) {
        int chapter() {
            return Integer.parseInt(requirement.substring(0, requirement.indexOf('.')));
        }

        boolean appliesHere() {
            return applies.equals("yes");
        }
    }

    @Test
    void each_requirement_stands_once_with_its_level() {
        assertThat(rows).isNotEmpty().allSatisfy(row -> {
            assertThat(row.requirement()).matches(REQUIREMENT);
            assertThat(row.level()).isBetween(1, 2);
        });
        assertThat(rows.stream().map(Row::requirement)).doesNotHaveDuplicates();
    }

    @Test
    void a_chapter_that_was_gone_through_is_there_whole() {
        var found = rows.stream()
                .filter(row -> WHOLE.containsKey(row.chapter()))
                .collect(Collectors.groupingBy(Row::chapter, TreeMap::new, Collectors.counting()));

        assertThat(found).isEqualTo(WHOLE);
    }

    @Test
    void what_applies_is_proved_or_open_with_a_reason_and_what_does_not_says_why() {
        assertThat(rows).allSatisfy(row -> {
            if (!row.appliesHere()) {
                assertThat(reason(row.applies(), "no: ")).as(row.requirement()).hasSizeGreaterThan(SHORTEST_REASON);
                assertThat(row.state()).as(row.requirement()).isEqualTo("does not apply");
            } else if (row.state().equals("proved"))
                assertThat(row.proof()).as(row.requirement()).isNotEmpty();
            else assertThat(reason(row.state(), "open: ")).as(row.requirement()).hasSizeGreaterThan(SHORTEST_REASON);
        });
    }

    @Test
    void every_proof_is_there() {
        assertThat(rows.stream().flatMap(row -> row.proof().stream()))
                .isNotEmpty()
                .allSatisfy(proof -> assertThat(isThere(proof)).as(proof).isTrue());
    }

    @Test
    void the_words_about_the_table_count_as_it_does() throws IOException {
        long proved = rows.stream().filter(row -> row.state().equals("proved")).count();
        long open =
                rows.stream().filter(row -> row.state().startsWith("open: ")).count();
        long not = rows.stream().filter(row -> !row.appliesHere()).count();

        assertThat(Files.readString(WORDS))
                .contains("%d requirements: %d proved, %d open, %d that do not apply"
                        .formatted(rows.size(), proved, open, not));
    }

    private static String reason(String cell, String beginning) {
        assertThat(cell).startsWith(beginning);
        return cell.substring(beginning.length());
    }

    /** A file of the project, or a class with a method of that name. */
    private static boolean isThere(String proof) {
        int hash = proof.indexOf('#');
        return hash < 0
                ? Files.isRegularFile(Path.of(proof))
                : has(proof.substring(0, hash), proof.substring(hash + 1));
    }

    private static boolean has(String type, String method) {
        try {
            var found = Class.forName(type, false, AsvsTableTests.class.getClassLoader());
            return Arrays.stream(found.getDeclaredMethods())
                    .anyMatch(one -> one.getName().equals(method));
        } catch (ClassNotFoundException none) {
            return false;
        }
    }

    private static List<Row> read() {
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = CSVParser.parse(TABLE, StandardCharsets.UTF_8, format)) {
            return parser.stream()
                    .map(line -> new Row(
                            line.get("requirement"),
                            Integer.parseInt(line.get("level")),
                            line.get("applies"),
                            parts(line.get("proof")),
                            line.get("state")))
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static List<String> parts(String cell) {
        return cell.isBlank() ? List.of() : List.of(cell.split("; "));
    }
}
