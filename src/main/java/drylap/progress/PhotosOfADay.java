package drylap.progress;

import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * How many photos one person may send within 24 hours, so that nobody fills the disk (OWASP ASVS 4.0.3, 12.1.3). A few that come at the very same
 * time may get past it.
 */
@Component
final class PhotosOfADay {
    private static final Duration DAY = Duration.ofDays(1);

    private final PhotoRows rows;
    private final Clock clock;
    private final int most;

    /** @throws IllegalArgumentException where the setting would let nobody send one */
    PhotosOfADay(PhotoRows rows, Clock clock, @Value("${drylap.photos.a-day:500}") int most) {
        if (most < 1)
            throw new IllegalArgumentException("DRYLAP_PHOTOS_A_DAY is %d; accepted: 1 or more".formatted(most));
        this.rows = rows;
        this.clock = clock;
        this.most = most;
    }

    /** What speaks against one more. */
    Optional<Saying> against(Person who) {
        return rows.receivedFrom(who, clock.instant().minus(DAY)) < most
                ? Optional.empty()
                : Optional.of(Saying.of(
                        "You have sent {0, plural, one {# photo} other {# photos}} within 24 hours, as many as one may. This one stays on the phone and is sent later by itself.",
                        most));
    }
}
