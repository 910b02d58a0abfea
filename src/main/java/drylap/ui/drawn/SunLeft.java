package drylap.ui.drawn;

import drylap.progress.Exposed;
import drylap.progress.OpeningState;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** Which layer of a course has lain in the sun the longest. */
final class SunLeft {
    /** Common practice, no source: a week's notice still lets a crew come. */
    private static final int SHORT_DAYS = 7;

    private SunLeft() {}

    private record Bare(String opening, Exposed layer) {}

    /** One line for each kind of layer that lies bare. */
    static List<String> words(Speech say, List<OpeningState> states) {
        List<String> lines = new ArrayList<>();
        for (var part : Exposed.Part.values()) {
            var bare = bare(states).stream()
                    .filter(one -> one.layer().part() == part)
                    .toList();
            least(bare).ifPresent(first -> lines.add(words(say, first, bare.size())));
        }
        return List.copyOf(lines);
    }

    static boolean isShort(List<OpeningState> states) {
        return bare(states).stream()
                .map(one -> one.layer().daysLeft())
                .filter(Objects::nonNull)
                .anyMatch(left -> left <= SHORT_DAYS);
    }

    private static String words(Speech say, Bare first, int of) {
        return of == 1
                ? say.it("{0} ({1})", first.layer().saying(), first.opening())
                : say.it("{0} ({1} first of {2})", first.layer().saying(), first.opening(), of);
    }

    /** The least where one is known: days that nobody counted say nothing about the others. */
    private static java.util.Optional<Bare> least(List<Bare> bare) {
        return bare.stream()
                .min(Comparator.comparing(
                        one -> one.layer().daysLeft(), Comparator.nullsLast(Comparator.naturalOrder())));
    }

    private static List<Bare> bare(List<OpeningState> states) {
        return states.stream()
                .flatMap(state -> state.exposures().stream()
                        .map(layer -> new Bare(state.opening().id().value(), layer)))
                .toList();
    }
}
