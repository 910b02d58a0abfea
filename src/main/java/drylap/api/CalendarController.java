package drylap.api;

import drylap.calendars.CrewCalendars;
import drylap.calendars.Feed;
import java.nio.charset.StandardCharsets;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Gives a crew's calendar to the devices that follow it; the secret in the address is all that they need. */
@RestController
final class CalendarController {
    private static final MediaType ICALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);

    private final CrewCalendars calendars;

    CalendarController(CrewCalendars calendars) {
        this.calendars = calendars;
    }

    /** Unknown and revoked are answered alike; asked again with its tag, an unchanged calendar is not sent anew. */
    @GetMapping("/calendar/{secret}.ics")
    ResponseEntity<byte[]> calendar(@PathVariable String secret) {
        return calendars.read(secret).map(CalendarController::sent).orElseThrow(NotFound::new);
    }

    private static ResponseEntity<byte[]> sent(Feed feed) {
        return ResponseEntity.ok()
                .contentType(ICALENDAR)
                .cacheControl(CacheControl.noCache().cachePrivate())
                .eTag("\"%s\"".formatted(feed.tag()))
                .lastModified(feed.changedAt())
                .header("Content-Disposition", "inline; filename=\"crew.ics\"")
                .body(feed.text().getBytes(StandardCharsets.UTF_8));
    }
}
