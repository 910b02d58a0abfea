package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;

@DbTest
class JobFoldersDbTests {
    @Autowired
    JobFolders folders;

    @Autowired
    DSLContext db;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void a_folder_comes_back_as_it_was_saved(long seed) {
        JobFolder folder = JobFolderFixture.of(seed);

        FolderId id = folders.save("week " + seed, folder);

        assertThat(folders.load(id)).isEqualTo(folder);
    }

    @Test
    void folders_with_the_same_ids_do_not_touch_each_other() {
        JobFolder one = JobFolderFixture.of(21);
        JobFolder other = JobFolderFixture.of(22);

        FolderId first = folders.save("one", one);
        FolderId second = folders.save("other", other);

        assertThat(folders.load(first)).isEqualTo(one);
        assertThat(folders.load(second)).isEqualTo(other);
    }

    @Test
    void a_season_of_3000_openings_and_40000_forecast_hours_is_saved_and_loaded_in_seconds() {
        JobFolder season = JobFolderFixture.of(7, 21, 3_000, 2_000);

        assertThat(season.forecasts().stream().mapToInt(f -> f.hours().size()).sum())
                .isEqualTo(40_000);
        long begin = System.nanoTime();
        FolderId id = folders.save("season", season);
        long saved = System.nanoTime();
        assertThat(folders.load(id)).isEqualTo(season);
        System.out.printf(
                "season saved in %d ms, loaded in %d ms%n",
                (saved - begin) / 1_000_000, (System.nanoTime() - saved) / 1_000_000);

        assertThat(Duration.ofNanos(saved - begin)).isLessThan(Duration.ofSeconds(20));
    }

    @Test
    void the_newest_folder_comes_first_in_the_list() {
        FolderId older = folders.save("older", JobFolderFixture.of(1));
        FolderId newer = folders.save("newer", JobFolderFixture.of(2, 3, 10, 1));

        List<StoredFolder> list = folders.list();

        assertThat(list).extracting(StoredFolder::id).startsWith(newer, older);
        assertThat(list.getFirst()).returns("newer", StoredFolder::name).returns(3, StoredFolder::sites);
        assertThat(list.getFirst().openings()).isEqualTo(10);
    }

    @Test
    void a_failure_in_the_last_table_leaves_nothing_in_any() {
        Map<String, Integer> before = rows();
        JobFolder folder = JobFolderFixture.of(5);
        List<PublishedVisit> published = new ArrayList<>(folder.published());
        published.add(byNobody(published.removeLast()));

        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() -> folders.save("broken", folder.withPublished(published)))
                .withMessageContaining("published_visit");

        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void a_folder_that_is_not_there_is_named() {
        assertThatExceptionOfType(UnknownFolder.class)
                .isThrownBy(() -> folders.load(new FolderId(999_999)))
                .withMessage("there is no job folder number 999999");
    }

    private static PublishedVisit byNobody(PublishedVisit published) {
        Visit visit = published.visit();
        return new PublishedVisit(
                new Visit(
                        new CrewId("nobody"),
                        visit.date(),
                        visit.sequence(),
                        visit.facade(),
                        visit.level(),
                        visit.opening(),
                        visit.task(),
                        visit.start(),
                        visit.end()),
                true);
    }

    private Map<String, Integer> rows() {
        return db.meta().getTables().stream()
                .filter(table -> "public"
                        .equals(
                                table.getSchema() == null
                                        ? ""
                                        : table.getSchema().getName()))
                .collect(Collectors.toMap(Table::getName, db::fetchCount));
    }
}
