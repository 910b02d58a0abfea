package drylap.calendars;

import drylap.planning.CurrentFolders;
import drylap.planning.Plans;
import drylap.planning.Publication;
import drylap.planning.Publications;
import drylap.speech.Speech;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What crews' calendars tell. After a publication the first who asks has the crew's entries brought up to date: what a plan
 * changes rises in sequence, what it no longer has is cancelled.
 */
@Service
public final class CrewCalendars {
    /** How long a calendar shows what is over or cancelled; devices that did not ask for so long have dropped it by themselves. */
    public static final Duration KEPT = Duration.ofDays(30);

    private final CalendarLinks links;
    private final Entries entries;
    private final Publications publications;
    private final CurrentFolders current;
    private final Plans plans;
    private final TransactionTemplate transaction;
    private final Clock clock;

    CrewCalendars(
            CalendarLinks links,
            Entries entries,
            Publications publications,
            CurrentFolders current,
            Plans plans,
            TransactionTemplate transaction,
            Clock clock) {
        this.links = links;
        this.entries = entries;
        this.publications = publications;
        this.current = current;
        this.plans = plans;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** The calendar that a secret opens; none where the secret is unknown or revoked. */
    public Optional<Feed> read(String secret) {
        return transaction.execute(_ -> links.open(secret).map(this::feed));
    }

    private Feed feed(CalendarLink link) {
        var voice = new Voice(link.crew(), link.reading());
        publications.inWork().flatMap(publications::latest).ifPresent(published -> tell(voice, published));
        Instant oldest = clock.instant().minus(KEPT);
        return FeedWriter.write(voice, entries.after(voice, oldest, link.reach()), link.madeAt());
    }

    private void tell(Voice voice, Publication published) {
        if (entries.hold(voice) == published.id().value()) return;
        var plan = plans.load(published.plan());
        var words = new StayWords(new Speech(voice.reading()), current.load(published.folder()), plan);
        Map<Stay.Key, Entry> before = entries.of(voice);
        List<Stay> stays = Stay.of(plan, voice.crew());
        stays.forEach(stay -> {
            Told told = words.told(stay);
            Entry was = before.remove(stay.key());
            if (was == null) entries.add(voice, stay.key(), told, clock.instant());
            else if (was.cancelledAt() != null || !was.told().equals(told))
                entries.change(was, told, clock.instant(), null);
        });
        before.values().stream().filter(was -> was.cancelledAt() == null).forEach(was -> end(voice, was, published));
        entries.toldUpTo(voice, published.id().value());
    }

    /** The plan no longer has it. What was over stays as it was: plans hold only what is left to do. */
    private void end(Voice voice, Entry was, Publication published) {
        Told told = was.told();
        if (!told.end().isAfter(published.at())) return;
        if (told.start().isBefore(published.at()))
            entries.change(
                    was,
                    told.cutAt(
                            published.at(),
                            new Speech(voice.reading())
                                    .it("Ends here: the plan published since sends the crew here no longer.")),
                    clock.instant(),
                    null);
        else entries.change(was, told, clock.instant(), clock.instant());
    }
}
