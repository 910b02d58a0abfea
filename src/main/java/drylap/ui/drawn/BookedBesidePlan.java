package drylap.ui.drawn;

import drylap.handoff.Bookings.Booking;
import drylap.kernel.SiteId;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Site;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * The days that follow-on crews booked, from today on, beside what the plan that is looked at has for them then.
 *
 * @param rows in the order of the days
 */
public record BookedBesidePlan(List<Row> rows) {
    /** @param plan what the plan has for that crew at that site on that day */
    public record Row(LocalDate date, String day, String crew, String site, String by, String note, String plan) {}

    public static BookedBesidePlan of(Speech say, FolderShown shown, List<Booking> bookings, Instant now) {
        return new BookedBesidePlan(bookings.stream()
                .filter(booking -> shown.folder().sites().stream().anyMatch(isAt(booking.site())))
                .filter(booking -> !booking.date().isBefore(today(shown.site(booking.site()), now)))
                .map(booking -> row(say, shown, booking))
                .toList());
    }

    private static java.util.function.Predicate<Site> isAt(SiteId id) {
        return site -> site.id().equals(id);
    }

    private static LocalDate today(Site site, Instant now) {
        return LocalDate.ofInstant(now, site.zone());
    }

    private static Row row(Speech say, FolderShown shown, Booking booking) {
        return new Row(
                booking.date(),
                say.day(booking.date()),
                booking.crew().value(),
                shown.site(booking.site()).name(),
                booking.by(),
                booking.note(),
                plan(say, shown, booking));
    }

    private static String plan(Speech say, FolderShown shown, Booking booking) {
        if (shown.plan().isEmpty()) return say.it("no plan yet");
        long visits = shown.plan().map(Plan::visits).orElse(List.of()).stream()
                .filter(visit -> isFor(visit, booking))
                .count();
        if (visits == 0) return say.it("nothing for it there that day");
        return say.it("{0, plural, one {# visit} other {# visits}}", visits);
    }

    private static boolean isFor(Visit visit, Booking booking) {
        return visit.crew().equals(booking.crew())
                && visit.date().equals(booking.date())
                && visit.facade().site().equals(booking.site());
    }
}
