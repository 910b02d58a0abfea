package drylap.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import drylap.assembly.WorkLine;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.StoredFolder;
import drylap.platform.News;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.planner.ViewTest;
import java.time.Clock;
import java.time.Duration;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What open pages fetch after news. Nothing here goes by how long it took: what is shared is kept for an hour. */
@ViewTest
class SharedFoldersViewTests {
    private static final OpeningId ONE = new OpeningId("QW1-01");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @Autowired
    private ShownFolders shownFolders;

    @Autowired
    private News news;

    @Autowired
    private JobFolders folders;

    @Autowired
    private OpeningStates states;

    @Autowired
    private StepLog log;

    @Autowired
    private TestPeople people;

    @Autowired
    private Clock clock;

    private SharedFolders shared;
    private Person who;
    private StoredFolder stored;

    @BeforeEach
    void a_folder_is_there() {
        shared = new SharedFolders(shownFolders, news, Duration.ofHours(1));
        who = people.scheduler();
        var id = folders.save("quay", new QuayFolder().folder());
        stored = folders.list(who).stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** News of other work may come in between, after which both fetch anew. */
    @Test
    void people_with_the_same_rights_share_a_fetch() {
        var other = people.scheduler();
        await().atMost(PATIENCE).until(() -> shared.told(who, stored, false) == shared.told(other, stored, false));
    }

    @Test
    void whoever_sees_other_sites_never_gets_what_another_sees() {
        var miller = people.add(Role.SCHEDULER, Reach.of(Set.of(new SiteId("M"))), null);
        shared.told(who, stored, false);

        assertThat(shared.told(miller, stored, false).folder().sites())
                .hasSizeLessThan(
                        shared.told(who, stored, false).folder().sites().size());
    }

    @Test
    void what_was_fetched_before_a_mark_is_not_shown_after_its_news() {
        var before = shared.told(who, stored, false);

        WorkLine first = states.of(who, stored.id(), ONE).next().getFirst();
        log.mark(who, MarkRequest.done(UUID.randomUUID(), stored.id(), ONE, first.code(), clock.instant()));

        await().atMost(PATIENCE).until(() -> shared.told(who, stored, false) != before);
    }

    @Test
    void what_holds_the_same_is_kept_once_and_own_changes_are_seen_at_once() {
        var before = shared.own(who, stored, false);
        assertThat(shared.own(people.scheduler(), stored, false)).isSameAs(before);

        WorkLine first = states.of(who, stored.id(), ONE).next().getFirst();
        log.mark(who, MarkRequest.done(UUID.randomUUID(), stored.id(), ONE, first.code(), clock.instant()));

        assertThat(shared.own(who, stored, false).folder()).isNotEqualTo(before.folder());
    }
}
