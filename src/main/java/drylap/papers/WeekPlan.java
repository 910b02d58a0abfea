package drylap.papers;

import drylap.speech.Speech;
import java.util.List;

/**
 * Crews by days as they are printed for a wall. Times are minutes of the crew's own day.
 *
 * @param say in whose words it is
 * @param origin by which plan, and when it was printed
 * @param notes what is to be heeded before anything else, a paragraph each
 * @param where name and address of each site that has one, a line each
 * @param link what opens it as it is by then
 * @param from minute at which the strip of a day begins, and {@code until} at which it ends
 */
public record WeekPlan(
        Speech say,
        String title,
        String origin,
        List<String> notes,
        List<String> where,
        String link,
        int from,
        int until,
        List<Day> days,
        List<Crew> crews) {
    public WeekPlan {
        notes = List.copyOf(notes);
        where = List.copyOf(where);
        days = List.copyOf(days);
        crews = List.copyOf(crews);
    }

    /**
     * A column.
     *
     * @param rain when it rains where, a line for each site where it does
     */
    public record Day(String name, List<String> rain) {
        public Day {
            rain = List.copyOf(rain);
        }
    }

    /** A row; it has a cell for each day. */
    public record Crew(String name, String trade, List<Cell> cells) {
        public Crew {
            cells = List.copyOf(cells);
        }
    }

    /**
     * What a crew does on a day.
     *
     * @param said instead of visits: a free day, a day off
     */
    public record Cell(String said, List<Band> bands, List<Stay> stays) {
        public Cell {
            bands = List.copyOf(bands);
            stays = List.copyOf(stays);
        }
    }

    /** A stretch of the day's strip. */
    public record Band(Kind kind, int from, int until) {
        /** What it stands for. */
        public enum Kind {
            SHIFT,
            RAIN,
            DARK,
            NOT_FORECAST,
            WORK
        }
    }

    /**
     * Visits along one course.
     *
     * @param head when and what
     * @param place site, facade, level
     * @param openings all of them
     * @param warnings what speaks against it
     */
    public record Stay(String head, String place, String openings, List<String> warnings) {
        public Stay {
            warnings = List.copyOf(warnings);
        }
    }
}
