package drylap.ui.drawn;

import drylap.calendars.CalendarLink;
import drylap.kernel.SiteId;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The links in use to a crew's calendar, each in a line. */
public record CalendarLines(List<Line> lines) {
    public record Line(long id, String words) {}

    public static CalendarLines of(List<CalendarLink> links, ZoneId zone) {
        return new CalendarLines(links.stream()
                .filter(CalendarLink::inUse)
                .map(link -> new Line(link.id(), words(link, zone)))
                .toList());
    }

    private static String words(CalendarLink link, ZoneId zone) {
        return "link made %s by %s, %s%s"
                .formatted(Words.moment(link.madeAt(), zone), link.by(), read(link.readAt(), zone), sites(link));
    }

    private static String read(@Nullable Instant at, ZoneId zone) {
        return at == null ? "not read yet" : "last read " + Words.moment(at, zone);
    }

    private static String sites(CalendarLink link) {
        if (link.reach().everySite()) return "";
        return "; tells of %s only"
                .formatted(link.reach().sites().stream()
                        .sorted()
                        .map(SiteId::value)
                        .collect(Collectors.joining(", ")));
    }
}
