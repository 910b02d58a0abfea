package drylap.papers;

import drylap.speech.Speech;
import java.util.List;

/**
 * A crew's day as it is printed.
 *
 * @param say in whose language it is printed
 * @param title crew and date
 * @param origin by which plan, and when it was printed
 * @param load what goes into the van, a paragraph each; empty where nothing does
 * @param kinds the lap section of each kind of opening of the day
 */
public record DaySheet(
        Speech say,
        String title,
        String origin,
        List<Place> places,
        List<String> load,
        List<Stop> stops,
        List<Kind> kinds) {
    public DaySheet {
        places = List.copyOf(places);
        load = List.copyOf(load);
        stops = List.copyOf(stops);
        kinds = List.copyOf(kinds);
    }

    /**
     * A site of the day.
     *
     * @param address how to find it by road, a line each; empty where that is not told
     * @param where its place on a map
     * @param holds points beyond which nobody goes on until someone has looked
     */
    public record Place(String name, List<String> address, String where, List<String> holds) {
        public Place {
            address = List.copyOf(address);
            holds = List.copyOf(holds);
        }
    }

    /**
     * A visit.
     *
     * @param facts where it is, what is to be done, what lies before it
     * @param warnings what speaks against beginning there
     * @param link what opens it on a phone
     */
    public record Stop(
            String opening,
            String time,
            List<String> facts,
            List<String> warnings,
            Front front,
            String link,
            List<Step> steps) {
        public Stop {
            facts = List.copyOf(facts);
            warnings = List.copyOf(warnings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * A line to tick.
     *
     * @param done ticked already
     */
    public record Step(String words, boolean done) {}

    /**
     * A kind of opening.
     *
     * @param openings that are of it
     * @param svg its lap section in plain colours
     */
    public record Kind(String words, String openings, String svg) {}
}
