package drylap.papers;

import drylap.speech.Speech;
import java.util.List;
import java.util.Optional;

/**
 * The record of one act of handing over, as it is printed and filed.
 *
 * @param say in whose language it is printed
 * @param title what was done, to what
 * @param origin its number, and when it was printed
 * @param facts who, when, where, why; name and value
 * @param holds hold points of the site, and how they stand
 * @param link what opens it on a screen
 * @param rows the openings, in the state that each was in then
 * @param chain every act at these openings, the oldest first
 * @param laps the lap section of each kind of opening
 * @param photos those given with the record first
 * @param left what of photos is not on the paper, and why; empty where all are
 */
public record RecordSheet(
        Speech say,
        String title,
        String origin,
        List<Fact> facts,
        List<String> holds,
        String link,
        List<Row> rows,
        List<Act> chain,
        List<DaySheet.Kind> laps,
        List<Photo> photos,
        String left) {
    public RecordSheet {
        facts = List.copyOf(facts);
        holds = List.copyOf(holds);
        rows = List.copyOf(rows);
        chain = List.copyOf(chain);
        laps = List.copyOf(laps);
        photos = List.copyOf(photos);
    }

    public record Fact(String name, String value) {}

    /**
     * An opening.
     *
     * @param front empty where how it stood cannot be drawn any more
     * @param said where it is, how rain-safe it was then, its state
     */
    public record Row(String opening, Optional<Front> front, List<String> said) {
        public Row {
            said = List.copyOf(said);
        }
    }

    /** @param self this record itself */
    public record Act(String when, String what, String who, String openings, boolean self) {}

    /**
     * A photo.
     *
     * @param jpeg upright
     * @param widthPx of it, as is {@code heightPx}: pixels
     * @param words of which opening, by whom, when
     */
    public record Photo(byte[] jpeg, int widthPx, int heightPx, String words) {}
}
