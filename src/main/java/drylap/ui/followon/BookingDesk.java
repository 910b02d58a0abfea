package drylap.ui.followon;

import drylap.handoff.Bookings;
import drylap.kernel.FolderId;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.ApronFacts;
import drylap.ui.drawn.BookedDays;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Service;

/** Books crew-days of the folder in work. */
@Service
final class BookingDesk {
    private final Bookings bookings;
    private final Clock clock;

    BookingDesk(Bookings bookings, Clock clock) {
        this.bookings = bookings;
        this.clock = clock;
    }

    BookedDays days(Person who, ApronFacts facts) {
        var sites = facts.sites().stream()
                .filter(site -> who.reach().covers(site.id()))
                .toList();
        return BookedDays.of(
                new Speech(who.reading()),
                bookings.of(who, facts.id()),
                sites,
                who,
                facts.trade(who.crew()).isPresent(),
                today(sites));
    }

    void book(Person who, FolderId folder, Site site, LocalDate day, String note) {
        bookings.book(who, folder, site.id(), day, note);
    }

    void takeBack(Person who, FolderId folder, BookedDays.Row row) {
        bookings.withdraw(who, folder, row.site(), row.date());
    }

    private LocalDate today(List<Site> sites) {
        return LocalDate.ofInstant(clock.instant(), sites.getFirst().zone());
    }
}
