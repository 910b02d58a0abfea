package drylap.papers;

import drylap.speech.Speech;
import java.util.List;

/**
 * The release of a course to the trade that follows, as it is printed and signed.
 *
 * @param say in whose language it is printed
 * @param title site, facade and level
 * @param origin when it was printed
 * @param facts of the whole course: how many are ready, how the next layer goes, what is coming
 */
public record ReleaseSheet(Speech say, String title, String origin, List<String> facts, List<Row> rows) {
    public ReleaseSheet {
        facts = List.copyOf(facts);
        rows = List.copyOf(rows);
    }

    /**
     * An opening.
     *
     * @param ready the window crew has let go of it
     * @param words in whose hands it is, its lap, where its apron drains, how long that may stay exposed
     */
    public record Row(String opening, Front front, boolean ready, List<String> words) {
        public Row {
            words = List.copyOf(words);
        }
    }
}
