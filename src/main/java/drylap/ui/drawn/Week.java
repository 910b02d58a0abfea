package drylap.ui.drawn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The week sheet: crews by days. Times are minutes of the crew's own day. */
public record Week(int fromHour, int untilHour, List<Day> days, List<CrewRow> crews) {
    public record Day(String date, String weekday, String label, List<SiteSky> sites) {}

    public record SiteSky(String code, String site, List<Sky> sky) {}

    /** @param kind rain, dark or beyond */
    public record Sky(String kind, int from, int until) {}

    public record Stretch(int from, int until) {}

    /** @param task the code of the one task that the crew's trade does */
    public record CrewRow(String crew, String task, String trade, List<CrewDay> days) {}

    /**
     * @param shift absent on a day off
     * @param hidden visits of that day that the filter leaves out
     * @param idle what is said of a day without visits
     */
    public record CrewDay(
            String date,
            @Nullable Stretch shift,
            @Nullable Stretch rest,
            List<Sky> sky,
            List<Block> blocks,
            int hidden,
            String idle) {}

    /** Visits of a crew that follow each other along one course. */
    public record Block(
            String task,
            String siteCode,
            String site,
            String facade,
            int level,
            int from,
            int until,
            String fromText,
            String untilText,
            boolean beyond,
            boolean pinned,
            List<Item> items,
            List<Integer> ticks) {}

    /** @param start as a minute of the crew's day, as is {@code end} */
    public record Item(String opening, String from, String until, int start, int end, String words, boolean beyond) {}
}
