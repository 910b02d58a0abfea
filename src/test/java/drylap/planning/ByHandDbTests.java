package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.progress.WallOfAll;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Facade;
import drylap.sites.Site;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Sites, walls and crews that somebody puts in by hand, as the database keeps them. */
@DbTest
class ByHandDbTests {
    private static final ZoneId LISBON = ZoneId.of("Europe/Lisbon");
    private static final GeoPoint PLACE = new GeoPoint(41.15, -8.61);
    private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);

    @Autowired
    SitesByHand sites;

    @Autowired
    CrewsByHand crews;

    @Autowired
    JobFolders folders;

    @Autowired
    History history;

    @Autowired
    TestPeople people;

    private Person who = WallOfAll.SCHEDULER;

    @BeforeEach
    void a_scheduler_of_every_site() {
        who = people.scheduler();
    }

    private FolderId begun(String name) {
        return saved(
                sites.add(who, null, draft(name), List.of(new WallDraft("North", 0), new WallDraft("South", 180))));
    }

    private static SiteDraft draft(String name) {
        return new SiteDraft(name, "", PLACE, LISBON);
    }

    private static FolderId saved(HandResult result) {
        assertThat(result).isInstanceOf(HandResult.Saved.class);
        return ((HandResult.Saved) result).folder();
    }

    private static String why(HandResult result) {
        assertThat(result).isInstanceOf(HandResult.Refused.class);
        return ((HandResult.Refused) result).why().words();
    }

    private static CrewDays days(@Nullable LocalTime breakStart) {
        return new CrewDays(
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                MONDAY,
                MONDAY.plusDays(13),
                LocalTime.of(7, 0),
                LocalTime.of(15, 30),
                breakStart,
                breakStart == null ? null : breakStart.plusMinutes(30));
    }

    private static CrewDraft crew(String name) {
        return new CrewDraft(name, Trade.WINDOW, PLACE, LISBON, 3, days(LocalTime.NOON));
    }

    @Test
    void the_first_site_opens_a_folder_with_walls_labour_and_rules_at_their_defaults() {
        FolderId id = begun("Rua Nova");

        JobFolder folder = folders.load(id);
        assertThat(folder.sites()).singleElement().satisfies(site -> {
            assertThat(site.name()).isEqualTo("Rua Nova");
            assertThat(site.id().value()).startsWith("RUA-NOVA");
            assertThat(site.place()).isEqualTo(PLACE);
            assertThat(site.zone()).isEqualTo(LISBON);
        });
        assertThat(folder.facades()).extracting(Facade::azimuthDeg).containsExactly(0.0, 180.0);
        assertThat(folder.labour()).isEqualTo(StandardLabour.TABLE);
        assertThat(folder.rules().everywhere().own()).isEmpty();
        assertThat(folders.list().getFirst().sample()).isFalse();
        assertThat(history.seenBy(who, 1).getFirst().what()).contains("added site \"Rua Nova\"", "2 walls");
    }

    @Test
    void what_was_read_of_a_folder_before_is_known_to_be_old() {
        FolderId id = begun("Before");
        assertThat(folders.load(id).crews()).isEmpty();

        saved(crews.add(who, id, crew("window-1")));
        saved(sites.add(who, id, draft("After"), List.of()));

        assertThat(folders.load(id).crews()).hasSize(1);
        assertThat(folders.load(id).sites()).hasSize(2);
    }

    @Test
    void two_sites_of_one_name_in_different_folders_have_ids_of_their_own() {
        SiteId one = folders.load(begun("Twice")).sites().getFirst().id();
        SiteId other = folders.load(begun("Twice")).sites().getFirst().id();

        assertThat(one).isNotEqualTo(other);
    }

    @Test
    void what_is_wrong_is_said_and_nothing_is_stored() {
        int before = folders.list().size();
        assertThat(why(sites.add(who, null, draft(" "), List.of()))).contains("the site's name is blank", "accepted");
        assertThat(why(sites.add(who, null, draft("A"), List.of(new WallDraft("n", 0), new WallDraft("N", 0)))))
                .contains("is called \"N\" already", "another name");
        assertThat(why(sites.add(who, null, draft("A"), List.of(new WallDraft("n", 400)))))
                .contains("400", "0 to 360");
        var swapped = new SiteDraft("A", "", new GeoPoint(41.15, 122.3), LISBON);
        assertThat(why(sites.add(who, null, swapped, List.of()))).contains("Europe/Lisbon", "122.3", "accepted");
        assertThat(folders.list()).hasSize(before);

        FolderId id = begun("Once");
        assertThat(why(sites.add(who, id, draft("once"), List.of()))).contains("a site is called \"Once\" already");
        assertThat(folders.load(id).sites()).hasSize(1);
    }

    @Test
    void walls_are_added_turned_and_removed_and_the_only_site_stays() {
        FolderId id = begun("Walls");
        SiteId site = folders.load(id).sites().getFirst().id();

        saved(sites.addWalls(who, id, site, List.of(new WallDraft("Court", 200))));
        saved(sites.turn(who, id, new FacadeId(site, "Court"), 247.5));
        saved(sites.removeWall(who, id, new FacadeId(site, "North")));

        assertThat(folders.load(id).facades())
                .containsExactly(
                        new Facade(new FacadeId(site, "South"), 180, null),
                        new Facade(new FacadeId(site, "Court"), 247.5, null));
        assertThat(why(sites.remove(who, id, site))).contains("only site");
        saved(sites.change(
                who,
                id,
                site,
                new SiteDraft("Wells", " 1 Invented Row \n\nSampleton;ZZ 00001", new GeoPoint(40, -8), LISBON)));
        Site wells = folders.load(id).sites().getFirst();
        assertThat(wells.name()).isEqualTo("Wells");
        assertThat(wells.address().lines()).containsExactly("1 Invented Row", "Sampleton", "ZZ 00001");
        var long81 = new SiteDraft("Wells", "x".repeat(81), PLACE, LISBON);
        assertThat(why(sites.change(who, id, site, long81)))
                .contains("81 characters in line 1", "accepted: an address");
        assertThat(folders.load(id).sites().getFirst()).isEqualTo(wells);
    }

    @Test
    void a_site_or_wall_with_openings_stays() {
        FolderId id = folders.save("all", WallOfAll.folder());
        Facade wall = WallOfAll.folder().facades().getFirst();

        assertThat(why(sites.removeWall(who, id, wall.id()))).contains("has openings");
        if (WallOfAll.folder().sites().size() > 1)
            assertThat(why(sites.remove(who, id, wall.id().site()))).contains("has openings");
        assertThat(folders.load(id).facades()).isEqualTo(WallOfAll.folder().facades());
    }

    @Test
    void a_crew_comes_on_its_days_of_the_week_and_later_on_others() {
        FolderId id = begun("Crews");

        saved(crews.add(who, id, crew("window-1")));

        assertThat(folders.load(id).shifts()).hasSize(10).allSatisfy(shift -> {
            assertThat(shift.start()).isEqualTo(LocalTime.of(7, 0));
            assertThat(shift.breakEnd()).isEqualTo(LocalTime.of(12, 30));
            assertThat(shift.date().getDayOfWeek()).isLessThan(DayOfWeek.SATURDAY);
        });
        var saturdays = new CrewDays(
                Set.of(DayOfWeek.SATURDAY),
                MONDAY.plusDays(7),
                MONDAY.plusDays(20),
                LocalTime.of(8, 0),
                LocalTime.of(12, 0),
                null,
                null);
        saved(crews.setDays(who, id, new CrewId("window-1"), saturdays));
        assertThat(folders.load(id).shifts())
                .extracting(shift -> shift.date().toString())
                .containsExactly(
                        "2026-04-13",
                        "2026-04-14",
                        "2026-04-15",
                        "2026-04-16",
                        "2026-04-17",
                        "2026-04-25",
                        "2026-05-02");
        saved(crews.remove(who, id, new CrewId("window-1")));
        assertThat(folders.load(id).shifts()).isEmpty();
    }

    @Test
    void how_many_a_crew_are_is_told_changed_and_taken_back_and_no_minute_changes_by_it() {
        FolderId id = begun("People");
        var name = new CrewId("window-1");
        saved(crews.add(who, id, crew("window-1")));
        assertThat(folders.load(id).crews().getFirst().people()).isEqualTo(3);
        var labour = folders.load(id).labour();

        saved(crews.setPeople(who, id, name, 4));
        assertThat(folders.load(id).crews().getFirst().people()).isEqualTo(4);
        assertThat(folders.load(id).labour()).isEqualTo(labour);
        assertThat(why(crews.setPeople(who, id, name, 21))).contains("21 people", "accepted: 1 to 20");
        assertThat(why(crews.setPeople(who, id, name, 0))).contains("0 people", "accepted: 1 to 20");
        assertThat(why(crews.setPeople(who, id, new CrewId("none"), 2))).contains("no crew none");
        saved(crews.setPeople(who, id, name, null));
        assertThat(folders.load(id).crews().getFirst().people()).isNull();
    }

    @Test
    void a_crew_that_cannot_be_is_refused_with_what_would_be_accepted() {
        FolderId id = begun("Odd crews");
        saved(crews.add(who, id, crew("window-1")));

        assertThat(why(crews.add(who, id, crew("window-1")))).contains("is taken");
        assertThat(why(crews.add(who, id, crew(" ")))).contains("blank");
        var late = new CrewDraft("w", Trade.WRAP, PLACE, LISBON, null, days(LocalTime.of(15, 15)));
        assertThat(why(crews.add(who, id, late))).contains("the break is from 15:15", "accepted: within the day");
        var sunday = new CrewDays(
                Set.of(DayOfWeek.SUNDAY), MONDAY, MONDAY.plusDays(2), LocalTime.of(7, 0), LocalTime.NOON, null, null);
        assertThat(why(crews.setDays(who, id, new CrewId("window-1"), sunday))).contains("none of the chosen days");
        assertThat(folders.load(id).crews()).hasSize(1);
        assertThat(folders.load(id).shifts()).hasSize(10);
    }

    @Test
    void the_invented_sample_stays_as_it_is() {
        FolderId id = folders.saveSample("sample", WallOfAll.folder());

        assertThat(why(sites.add(who, id, draft("Mine"), List.of()))).contains("invented sample");
        assertThat(why(crews.add(who, id, crew("mine")))).contains("invented sample");
        folders.removeSample(id);
        assertThat(folders.list()).noneMatch(one -> one.id().equals(id));
    }

    @Test
    void whoever_has_some_sites_only_adds_none_and_crews_do_nothing_here() {
        FolderId id = begun("Rights");
        SiteId site = folders.load(id).sites().getFirst().id();
        var some = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("other"))), null);
        var fitter = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");

        for (Person one : List.of(some, fitter)) {
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> sites.add(one, null, draft("X"), List.of()));
            assertThatExceptionOfType(NotAllowed.class)
                    .isThrownBy(() -> sites.addWalls(one, id, site, List.of(new WallDraft("X", 0))));
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> sites.remove(one, id, site));
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> crews.add(one, id, crew("x")));
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> crews.remove(one, id, new CrewId("x")));
        }
    }
}
