package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Saying;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the rules of the wall say on the way from the bare wall to the cladding is said in Spanish too. */
class SpanishLapsTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));
    private static final Pattern IN_SVG = Pattern.compile("<(?:text|title|desc)[^>]*>([^<]+)<");

    static Stream<Variant> variants() {
        return Stream.of(Method.values())
                .flatMap(method -> Stream.of(Approach.values())
                        .flatMap(approach ->
                                Stream.of(SecondLayer.values()).map(second -> new Variant(method, approach, second))));
    }

    @ParameterizedTest
    @MethodSource("variants")
    void drawings_and_reasons_hold_no_english(Variant variant) {
        var words = new SpanishWords(List.of("A1 B1 A B"));
        var said = new TreeSet<String>();
        var list = WorkList.of(variant, true);
        List<String> done = new ArrayList<>();
        while (true) {
            read(list, done, said);
            var next = list.lines().stream()
                    .filter(line -> !done.contains(line.code()))
                    .filter(line -> list.missing(done, line).isEmpty())
                    .findFirst();
            if (next.isEmpty()) break;
            done.add(next.get().code());
        }
        assertThat(said)
                .hasSizeGreaterThan(50)
                .allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    private static void read(WorkList list, List<String> done, TreeSet<String> said) {
        var built = list.built(done);
        IN_SVG.matcher(LapSection.svg(built, LapSection.Layout.STACKED, SPANISH))
                .results()
                .forEach(text -> said.add(text.group(1).replaceAll("&[a-z0-9#]+;", "")));
        for (var line : list.lines()) {
            said.add(SPANISH.it(line.saying()));
            said.add(SPANISH.it(list.check(done, line).saying()));
            if (list.check(done, line) instanceof MarkCheck.WouldReverse reverse)
                IN_SVG.matcher(LapSection.svg(reverse.asItWouldBe(), LapSection.Layout.STACKED, SPANISH))
                        .results()
                        .forEach(text -> said.add(text.group(1).replaceAll("&[a-z0-9#]+;", "")));
        }
        Stream.of(
                        RainCheck.of(built).weaknesses().stream().map(Weakness::saying),
                        built.missing().stream().map(Lap::saying),
                        WaterTrace.of(built).stream().map(WaterPath::saying),
                        Stream.<Saying>of(built.apron().saying()))
                .flatMap(sayings -> sayings)
                .forEach(saying -> said.add(SPANISH.it(saying)));
    }
}
