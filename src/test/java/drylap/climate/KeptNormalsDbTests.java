package drylap.climate;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.util.List;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@DbTest
class KeptNormalsDbTests {
    private static final SiteId QUAY = new SiteId("Q");
    private static final SiteId MILL = new SiteId("M");
    private static final MonthlyNormals MAY = new MonthlyNormals(null, 5, 60, 12, 1.5, 0.5);
    private static final MonthlyNormals JUNE = new MonthlyNormals(null, 6, 40, 9);

    @Autowired
    KeptNormals kept;

    @Autowired
    JobFolders folders;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void store() {
        folder = folders.save("quay", new QuayFolder().folder());
    }

    @Test
    void what_is_kept_comes_back_with_its_site() {
        kept.keep(people.scheduler(), folder, QUAY, List.of(MAY, JUNE));

        assertThat(kept.of(folder)).containsExactly(MAY.at(QUAY), JUNE.at(QUAY));
    }

    @Test
    void a_new_file_takes_the_place_of_all_that_its_sites_had_and_of_nothing_else() {
        Person who = people.scheduler();
        kept.keep(who, folder, QUAY, List.of(MAY, JUNE));
        kept.keep(who, folder, MILL, List.of(MAY));

        kept.keep(who, folder, QUAY, List.of(JUNE));

        assertThat(kept.of(folder)).containsExactly(MAY.at(MILL), JUNE.at(QUAY));
    }

    @Test
    void removed_ones_are_gone_and_both_are_in_the_history() {
        Person who = people.scheduler();
        kept.keep(who, folder, QUAY, List.of(MAY));
        kept.drop(who, folder, QUAY);

        assertThat(kept.of(folder)).isEmpty();
        assertThat(db.select(CHANGE_LOG.WHAT)
                        .from(CHANGE_LOG)
                        .where(CHANGE_LOG.PERSON_ID.eq(who.id().value()))
                        .fetch(CHANGE_LOG.WHAT))
                .contains("brought in monthly normals", "removed the monthly normals");
    }

    @Test
    void normals_of_a_site_that_is_not_theirs_are_neither_kept_nor_removed() {
        kept.keep(people.scheduler(), folder, QUAY, List.of(JUNE));
        Person elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(MILL)), null);

        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> kept.keep(elsewhere, folder, QUAY, List.of(MAY)));
        assertThatExceptionOfType(NotAllowed.class)
                .as("a row that names the other site")
                .isThrownBy(() -> kept.keep(elsewhere, folder, MILL, List.of(MAY, JUNE.at(QUAY))));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> kept.drop(elsewhere, folder, QUAY));
        assertThat(kept.of(folder)).as("nothing half done").containsExactly(JUNE.at(QUAY));
    }

    @Test
    void a_window_crew_may_not_change_them() {
        Person crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");

        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> kept.keep(crew, folder, QUAY, List.of(MAY)));
    }
}
