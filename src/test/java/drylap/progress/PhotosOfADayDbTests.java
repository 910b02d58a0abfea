package drylap.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.pictures.SamplePictures;
import drylap.planning.JobFolders;
import drylap.platform.FileStore;
import drylap.platform.News;
import drylap.progress.PhotoResult.AlreadyStored;
import drylap.progress.PhotoResult.Refused;
import drylap.progress.PhotoResult.Stored;
import drylap.security.Person;
import drylap.security.Role;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

/** Numbers in brackets are requirements of OWASP ASVS 4.0.3. */
@DbTest
class PhotosOfADayDbTests {
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    @Autowired
    JobFolders folders;

    @Autowired
    Photos photos;

    @Autowired
    PhotoPlaces places;

    @Autowired
    FileStore files;

    @Autowired
    PhotoRows rows;

    @Autowired
    OpeningStates states;

    @Autowired
    News news;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    DSLContext db;

    @Autowired
    Clock clock;

    private final Person one = windowCrew(7_101);
    private FolderId folder = new FolderId(0);

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
    }

    private static Person windowCrew(long id) {
        return new Person(
                new PersonId(id), "many" + id, "Many", Role.WINDOW_CREW, Reach.EVERYWHERE, new CrewId("W"), false);
    }

    private PhotoRequest request(String format) {
        return new PhotoRequest(
                UUID.randomUUID(), folder, WallOfAll.plain(Method.B), NOON, SamplePictures.drawn(format, 4, 3));
    }

    private Photos withAtMost(int aDay) {
        return new Photos(db, rows, files, places, states, news, transaction, new PhotosOfADay(rows, clock, aDay));
    }

    /** [12.1.3] The same photo again counts for nothing. */
    @Test
    void of_more_photos_than_one_may_send_within_a_day_none_is_kept_and_what_came_before_stays() {
        var few = withAtMost(2);
        var first = request("jpg");
        few.add(one, first);
        few.add(one, first);
        assertThat(few.add(one, request("png"))).isInstanceOf(Stored.class);

        var over = request("jpg");
        assertThat(few.add(one, over)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.why()).isEqualTo(Refused.Why.MANY_TODAY);
            assertThat(refused.words())
                    .startsWith(
                            "You have sent 2 photos within 24 hours, as many as one may. This one stays on the phone");
        });
        assertThat(rows.byId(over.id())).isEmpty();
        assertThat(few.add(one, first)).isInstanceOf(AlreadyStored.class);
        assertThat(photos.add(one, over)).as("by the limit that is usual").isInstanceOf(Stored.class);
    }

    /** [12.1.3] */
    @Test
    void the_next_day_counts_anew_and_others_count_for_themselves() {
        var other = windowCrew(7_102);
        photos.add(other, request("jpg"));
        var tomorrow = Clock.fixed(clock.instant().plus(Duration.ofHours(25)), ZoneOffset.UTC);

        assertThat(new PhotosOfADay(rows, clock, 1).against(other)).isPresent();
        assertThat(new PhotosOfADay(rows, clock, 1).against(windowCrew(7_103))).isEmpty();
        assertThat(new PhotosOfADay(rows, tomorrow, 1).against(other)).isEmpty();
    }

    @Test
    void a_limit_that_lets_nobody_send_a_photo_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PhotosOfADay(rows, clock, 0))
                .withMessage("DRYLAP_PHOTOS_A_DAY is 0; accepted: 1 or more");
    }
}
