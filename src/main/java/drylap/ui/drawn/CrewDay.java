package drylap.ui.drawn;

import drylap.ui.drawn.Wall.Glyph;
import java.util.List;

/**
 * Where a crew goes on one day by the published plan.
 *
 * @param nothing why there is no stop; empty where there is one
 */
public record CrewDay(String title, List<Stop> stops, String nothing) {
    /**
     * One opening of the day.
     *
     * @param address of the site, in one line, where the stop before was at another; else empty
     * @param way what lies between the stop before and this one, in words; empty where nothing does
     * @param whyNot what speaks against beginning there; empty: it is ready
     */
    public record Stop(
            String opening,
            String site,
            String address,
            String place,
            String from,
            String until,
            String task,
            boolean waterTest,
            String work,
            Glyph glyph,
            String way,
            boolean done,
            List<String> whyNot) {
        public boolean ready() {
            return !done && whyNot.isEmpty();
        }

        /** In a few words, as the stop's own heading says it. */
        public String standing() {
            return done ? "done" : ready() ? "ready" : "not ready";
        }
    }
}
