package drylap.ui.drawn;

import static java.util.stream.Collectors.toMap;

import drylap.handoff.Bookings.Booking;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The days on which follow-on crews say that they will come.
 *
 * @param rows from today on, in order
 * @param sites where this person may book
 * @param days that may be picked
 */
public record BookedDays(List<Row> rows, List<Site> sites, List<LocalDate> days) {
    private static final int DAYS_AHEAD = 14;

    /** @param own this person may take it back */
    public record Row(SiteId site, LocalDate date, String words, String by, String note, boolean own) {}

    /** @param mayBook whether the person has a crew in the folder to book for */
    public static BookedDays of(
            Speech say, List<Booking> bookings, List<Site> sites, Person who, boolean mayBook, LocalDate today) {
        Map<SiteId, Site> byId = sites.stream().collect(toMap(Site::id, site -> site));
        return new BookedDays(
                bookings.stream()
                        .filter(booking -> !booking.date().isBefore(today))
                        .map(booking -> row(say, booking, byId, who))
                        .toList(),
                sites.stream()
                        .filter(site -> mayBook && who.may(Operation.BOOK_CREW_DAY, site.id()))
                        .toList(),
                today.datesUntil(today.plusDays(DAYS_AHEAD)).toList());
    }

    private static Row row(Speech say, Booking booking, Map<SiteId, Site> sites, Person who) {
        var site = sites.get(booking.site());
        String where = site == null ? booking.site().value() : site.name();
        boolean own = who.may(Operation.BOOK_CREW_DAY, booking.site())
                && booking.crew().equals(who.crew());
        return new Row(
                booking.site(),
                booking.date(),
                say.it("{0}: crew {1} at {2}", say.day(booking.date()), booking.crew(), where),
                booking.by(),
                booking.note(),
                own);
    }
}
