package drylap.ui.drawn;

import drylap.assembly.Apron;
import drylap.assembly.RainRating;
import drylap.handoff.HandoffAct.Entry;
import drylap.kernel.Coded;
import drylap.speech.Saying;
import java.util.Optional;
import java.util.stream.Stream;

/** The state of an opening as an act wrote it down, in English, said again to each who reads it. */
final class WrittenState {
    private WrittenState() {}

    /** What is known by heart no more, as it was written. */
    static Saying of(Entry entry) {
        return Coded.parse(RainRating.class, entry.rating())
                .flatMap(rating -> of(rating, entry.state()))
                .orElseGet(() -> Saying.asItIs(entry.state()));
    }

    private static Optional<Saying> of(RainRating rating, String written) {
        return aprons().filter(apron -> written.equals("%s; %s".formatted(rating.words(), apron.words())))
                .findFirst()
                .map(apron -> Saying.of("{0}; {1}", Saying.of(rating.words()), apron.saying()));
    }

    private static Stream<Apron> aprons() {
        return Stream.concat(
                Stream.of(new Apron.Absent()),
                Stream.of(Apron.Plane.values())
                        .flatMap(plane -> Stream.of(new Apron.LowerEdgeFree(plane), new Apron.Held(plane))));
    }
}
