package drylap.ui.drawn;

import drylap.calendars.CalendarLink;
import drylap.kernel.SiteId;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The links in use to a crew's calendar, each in a line. */
public record CalendarLines(List<Line> lines) {
    public record Line(long id, String words) {}

    public static CalendarLines of(Speech say, List<CalendarLink> links, ZoneId zone) {
        return new CalendarLines(links.stream()
                .filter(CalendarLink::inUse)
                .map(link -> new Line(link.id(), words(say, link, zone)))
                .toList());
    }

    private static String words(Speech say, CalendarLink link, ZoneId zone) {
        String made = say.it(
                "link made {0} by {1}, {2}; in {3}",
                say.moment(link.madeAt(), zone),
                link.by(),
                read(say, link.readAt(), zone),
                link.reading().language().ownName());
        return link.reach().everySite() ? made : "%s; %s".formatted(made, sites(say, link));
    }

    private static String read(Speech say, @Nullable Instant at, ZoneId zone) {
        return at == null ? say.it("not read yet") : say.it("last read {0}", say.moment(at, zone));
    }

    private static String sites(Speech say, CalendarLink link) {
        return say.it(
                "tells of {0} only",
                link.reach().sites().stream().sorted().map(SiteId::value).collect(Collectors.joining(", ")));
    }
}
