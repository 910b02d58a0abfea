package drylap.speech;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part.Type;
import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.StepList;
import drylap.assembly.StepList.ListedStep;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeechTests {
    private static final String PAGE = "/speech/page.es.json";
    private static final String REST = "/speech/es.json";
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    private static Map<String, String> all() {
        return Stream.of(PAGE, REST)
                .flatMap(file -> Catalogue.read(file).entrySet().stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Set<String> saidInPage() {
        return worded(SaidInPage.under(Path.of("frontend")));
    }

    private static Set<String> saidInJava() {
        Set<String> said = new TreeSet<>(SaidInJava.under(Path.of("src/main/java")));
        for (var method : Method.values())
            for (var approach : Approach.values())
                StepList.of(method, approach).steps().stream()
                        .map(ListedStep::text)
                        .forEach(said::add);
        return worded(said);
    }

    /** Written alike in both (SI brochure, 5: symbols are not abbreviations of a language). */
    private static final Set<String> UNITS = Set.of("mm", "m", "km", "m/s", "ml", "h", "min", "°C");

    /** Without those that have no words of their own, such as {@code {0}: {1}}. */
    private static Set<String> worded(Set<String> said) {
        return said.stream()
                .filter(one -> one.replaceAll("\\{\\d\\}", "").matches(".*\\p{L}.*"))
                .filter(one -> !UNITS.contains(one))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatever_the_page_says_is_in_the_words_that_it_takes_along() {
        assertThat(saidInPage()).hasSizeGreaterThan(50);
        assertThat(Catalogue.read(PAGE).keySet()).containsExactlyInAnyOrderElementsOf(saidInPage());
    }

    @Test
    void whatever_else_is_said_has_its_spanish_words_once_and_nothing_is_kept_that_nobody_says() {
        var said = saidInJava();
        assertThat(said).hasSizeGreaterThan(250);
        assertThat(all().keySet()).containsAll(said);
        said.removeAll(Catalogue.read(PAGE).keySet());
        assertThat(Catalogue.read(REST).keySet()).containsExactlyInAnyOrderElementsOf(said);
    }

    @Test
    void both_languages_have_the_same_places_and_the_same_plurals() {
        all().forEach((english, spanish) ->
                assertThat(shape(spanish)).as(english).isEqualTo(shape(english)));
    }

    /** Where a sentence has which places, and of which plurals; Spanish needs one and other (CLDR, cardinal rules). */
    private static Set<String> shape(String sentence) {
        Set<String> shape = new TreeSet<>();
        var pattern = new MessagePattern(sentence);
        String argument = "";
        for (int i = 0; i < pattern.countParts(); i++) {
            var part = pattern.getPart(i);
            if (part.getType() == Type.ARG_NUMBER) argument = String.valueOf(part.getValue());
            if (part.getType() == Type.ARG_NUMBER) shape.add(argument);
            if (part.getType() == Type.ARG_START && part.getArgType() == ArgType.PLURAL) shape.add("plural");
            if (part.getType() == Type.ARG_SELECTOR) shape.add(argument + pattern.getSubstring(part));
        }
        return shape;
    }

    @Test
    void no_sentence_is_left_in_english_or_blank() {
        all().forEach((english, spanish) ->
                assertThat(spanish).as(english).isNotBlank().isNotEqualTo(english));
    }

    @Test
    void the_caution_is_complete() {
        assertThat(SPANISH.it(drylap.kernel.Caution.WORDS))
                .contains("nunca", "trabajo en altura", "persona competente", "códigos locales", "fabricante");
    }

    /** A term is translated in one way wherever it stands; the table says from where each choice comes. */
    @Test
    void terms_of_the_trade_are_the_same_everywhere() throws Exception {
        try (var in = SpeechTests.class.getResourceAsStream("/speech/glossary.es.csv");
                var reader = new java.io.InputStreamReader(in, java.nio.charset.StandardCharsets.UTF_8)) {
            List<CSVRecord> terms = CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
            assertThat(terms)
                    .hasSizeGreaterThan(20)
                    .allMatch(term -> !term.get("source").isBlank());
            terms.forEach(term -> all().forEach((english, spanish) -> {
                if (names(english, term.get("english"), terms))
                    assertThat(spanish.toLowerCase(java.util.Locale.ROOT))
                            .as("%s in: %s", term.get("english"), english)
                            .matches(".*\\b" + stem(term.get("spanish")) + ".*");
            }));
        }
    }

    /** As a word of its own, and not within a longer term such as "rough opening". */
    private static boolean names(String english, String term, List<CSVRecord> terms) {
        String rest = english.toLowerCase(java.util.Locale.ROOT);
        for (var other : terms)
            if (!other.get("english").equals(term) && other.get("english").contains(term))
                rest = rest.replace(other.get("english"), "");
        return rest.matches(".*\\b" + term + "s?\\b.*");
    }

    /** Without its plural. */
    private static String stem(String spanish) {
        return Arrays.stream(spanish.split(" ")).map(one -> one + "\\w*").collect(Collectors.joining(" "));
    }

    @Test
    void plurals_are_those_of_the_language() {
        String windows = "{0, plural, one {# window} other {# windows}}";
        assertThat(SPANISH.it(windows, 1)).isEqualTo("1 ventana");
        assertThat(SPANISH.it(windows, 0)).isEqualTo("0 ventanas");
        assertThat(Speech.ENGLISH.it(windows, 2)).isEqualTo("2 windows");
    }

    @Test
    void a_part_is_said_in_the_language_of_the_whole_and_a_name_as_it_is() {
        var saying = Saying.of("lap missing: {0}", Saying.of("{0} over {1}", Saying.of("apron"), "X'{0}"));
        assertThat(SPANISH.it(saying)).isEqualTo("falta el traslape: babero sobre X'{0}");
        assertThat(saying.words()).isEqualTo("lap missing: apron over X'{0}");
    }

    @Test
    void days_are_said_with_the_month_in_words() {
        assertThat(SPANISH.day(LocalDate.of(2026, 4, 14))).isEqualTo("mar 14 abr");
        assertThat(Speech.ENGLISH.day(LocalDate.of(2026, 4, 14))).isEqualTo("Tue 14 Apr");
    }

    /** By arithmetic: 25.4 mm are an inch (international inch, exact); the nearest sixteenth, in lowest terms. */
    @ParameterizedTest
    @CsvSource({
        "900, 35 7/16",
        "1408, 55 7/16",
        "25.4, 1",
        "12.7, 1/2",
        "1, 1/16",
        "0.7, 0",
        "304.8, 12",
        "914.4, 36",
        "927.1, 36 1/2"
    })
    void inches_are_told_to_the_nearest_sixteenth(double millimetres, String inches) {
        var byInches = new Speech(Reading.USUAL.by(Ruler.INCHES));
        assertThat(byInches.length(millimetres)).isEqualTo(inches + " in");
        assertThat(new Speech(byInches.reading().in(Language.SPANISH)).length(millimetres))
                .isEqualTo(inches + " pulg");
    }

    @Test
    void a_length_to_cut_is_told_by_both_rulers() {
        assertThat(Speech.ENGLISH.lengths(1408)).isEqualTo("1408 mm (55 7/16 in)");
        assertThat(new Speech(Reading.USUAL.by(Ruler.INCHES)).lengths(1408)).isEqualTo("55 7/16 in (1408 mm)");
        assertThat(Speech.ENGLISH.size(900, 1200)).isEqualTo("900 × 1200 mm");
        assertThat(new Speech(Reading.USUAL.by(Ruler.INCHES)).stretch(30_480, 1))
                .isEqualTo("100.0 ft");
        assertThat(new HashSet<>(List.of(Speech.ENGLISH))).contains(new Speech(Reading.USUAL));
    }
}
