package drylap.calendars;

import static drylap.persistence.jooq.Tables.CALENDAR_LINK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.planning.JobFolders;
import drylap.progress.WallOfAll;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Who makes, sees and revokes the links to crews' calendars. */
@DbTest
class CalendarLinksDbTests {
    private static final CrewId WINDOW = new CrewId("window-crew");
    private static final CrewId WRAP = new CrewId("wrap-crew");

    @Autowired
    JobFolders folders;

    @Autowired
    CalendarLinks links;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_folder_without_links() {
        folder = folders.save("links", WallOfAll.folder());
        db.deleteFrom(CALENDAR_LINK).execute();
    }

    @Test
    void a_secret_is_long_and_its_hash_alone_is_kept() {
        var made = links.make(WallOfAll.SCHEDULER, folder, WINDOW);

        assertThat(Base64.getUrlDecoder().decode(made.secret())).hasSizeGreaterThanOrEqualTo(16);
        assertThat(db.selectFrom(CALENDAR_LINK).fetch().format(100)).doesNotContain(made.secret());
        assertThat(made.path()).isEqualTo("/calendar/%s.ics".formatted(made.secret()));
        assertThat(links.make(WallOfAll.SCHEDULER, folder, WINDOW).secret()).isNotEqualTo(made.secret());
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"SCHEDULER", "CONTRACTOR"},
            mode = EnumSource.Mode.EXCLUDE)
    void nobody_but_a_scheduler_makes_or_revokes_links(Role role) {
        var made = links.make(WallOfAll.SCHEDULER, folder, WINDOW);
        Person other = people.add(role, Reach.EVERYWHERE, role.inCrew() ? "window-crew" : null);

        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> links.make(other, folder, WINDOW));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> links.revoke(other, made.link().id()));
        assertThat(links.of(WallOfAll.SCHEDULER, WINDOW)).allMatch(CalendarLink::inUse);
    }

    @Test
    void a_crew_sees_its_own_links_and_no_other_crews() {
        links.make(WallOfAll.SCHEDULER, folder, WINDOW);
        links.make(WallOfAll.SCHEDULER, folder, WRAP);

        assertThat(links.of(WallOfAll.WINDOW, WINDOW)).hasSize(1);
        assertThat(links.of(WallOfAll.WRAP, WRAP)).hasSize(1);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> links.of(WallOfAll.WINDOW, WRAP));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> links.of(WallOfAll.WRAP, WINDOW));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> links.of(WallOfAll.ADMINISTRATOR, WINDOW));
    }

    @Test
    void a_scheduler_of_one_site_makes_links_of_that_site_and_leaves_wider_ones_alone() {
        Person ofNorth = people.add(Role.SCHEDULER, Reach.of(Set.of(WallOfAll.NORTH)), null);
        var wide = links.make(WallOfAll.SCHEDULER, folder, WINDOW);
        var narrow = links.make(ofNorth, folder, WINDOW);

        assertThat(narrow.link().reach()).isEqualTo(ofNorth.reach());
        assertThat(links.of(ofNorth, WINDOW))
                .extracting(CalendarLink::id)
                .containsExactly(narrow.link().id());
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> links.revoke(ofNorth, wide.link().id()));
        assertThat(links.of(WallOfAll.SCHEDULER, WINDOW)).hasSize(2);
        assertThat(links.revoke(ofNorth, narrow.link().id())).isTrue();
    }

    @Test
    void a_link_needs_a_crew_of_the_folder_and_a_site_in_reach() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> links.make(WallOfAll.SCHEDULER, folder, new CrewId("nobody")))
                .withMessageContaining("has no crew nobody");
        Person elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new drylap.kernel.SiteId("far"))), null);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> links.make(elsewhere, folder, WINDOW));
    }

    @Test
    void who_revoked_a_link_and_when_it_was_read_is_kept() {
        var made = links.make(WallOfAll.SCHEDULER, folder, WINDOW);
        assertThat(made.link().readAt()).isNull();
        assertThat(links.open(made.secret())).isPresent();
        links.revoke(WallOfAll.SCHEDULER, made.link().id());

        assertThat(links.of(WallOfAll.SCHEDULER, WINDOW)).singleElement().satisfies(link -> {
            assertThat(link.readAt()).isNotNull();
            assertThat(link.revokedBy()).isEqualTo("Scheduler");
        });
        assertThat(links.open(made.secret())).isEmpty();
    }
}
