package drylap.calendars;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import biweekly.property.Status;
import drylap.DbTest;
import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.kernel.OpeningId;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.Plans;
import drylap.planning.PublicationId;
import drylap.planning.Publications;
import drylap.planning.PublishResult.Published;
import drylap.planning.Visit;
import drylap.progress.WallOfAll;
import drylap.sites.Site;
import drylap.sites.StreetAddress;
import drylap.speech.SpanishWords;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Plans published one after another, and what a device that follows the crew's calendar is told; read by another library. */
@DbTest
class CrewCalendarsDbTests {
    /** 07:00 by the clock of the sites. */
    private static final Instant SEVEN = Instant.parse("2099-04-13T14:00:00Z");

    private static final LocalDate DAY = LocalDate.of(2099, 4, 13);
    private static final StreetAddress ODD_ADDRESS = StreetAddress.read("9 Pier, old \\ yard; Žižkov 北京\nZZ 00001");

    private static final String ODD_NAME = "Pier \"9\"; north, old\nyard \\ Ürümqi 北京 – " + "é".repeat(60);

    @Autowired
    JobFolders folders;

    @Autowired
    Plans plans;

    @Autowired
    Publications publications;

    @Autowired
    CalendarLinks links;

    @Autowired
    CrewCalendars calendars;

    /** Of this test only: calendars belong to crews, whatever folder is in work. */
    private final CrewId crew = new CrewId("W-" + UUID.randomUUID());

    private FolderId folder = new FolderId(0);
    private @Nullable PublicationId newest;
    private String secret = "";

    @BeforeEach
    void a_crew_with_a_link() {
        folder = folders.save("calendars", job());
        secret = links.make(WallOfAll.SCHEDULER, folder, crew).secret();
    }

    private JobFolder job() {
        var wall = WallOfAll.folder();
        var crews = new ArrayList<>(wall.crews());
        var like = crews.getFirst();
        crews.add(new Crew(crew, like.trade(), like.methods(), like.base(), like.zone()));
        var sites = wall.sites().stream()
                .map(site -> site.id().equals(WallOfAll.SOUTH)
                        ? new Site(site.id(), ODD_NAME, site.place(), site.zone(), site.terrain(), ODD_ADDRESS)
                        : site)
                .toList();
        return new JobFolder(
                sites,
                wall.facades(),
                wall.openings(),
                crews,
                wall.shifts(),
                wall.travel(),
                wall.forecasts(),
                wall.labour(),
                wall.rules(),
                wall.published());
    }

    @Test
    void visits_of_a_day_at_a_site_are_one_entry_with_openings_load_and_caution() {
        publish(visit("north-0", WallOfAll.NORTH, 0), visit("north-1", WallOfAll.NORTH, 2));

        var entry = only(events());

        assertThat(entry.getDateStart().getValue()).isEqualTo(SEVEN);
        assertThat(entry.getDateEnd().getValue()).isEqualTo(SEVEN.plusSeconds(3 * 3600));
        assertThat(entry.getSummary().getValue()).isEqualTo("Site north: install 2 openings");
        assertThat(entry.getLocation().getValue()).isEqualTo("Site north");
        assertThat(entry.getGeo().getLatitude()).isEqualTo(47.6);
        assertThat(entry.getDescription().getValue())
                .contains("07:00 to 10:00 by the clock of America/Los_Angeles")
                .contains("07:00 north-0, street, level 1: install, method A, 900 × 1500 mm")
                .contains("09:00 north-1, street, level 2: install")
                .contains("Bring: 2 windows, ")
                .contains("A dry hour is never a statement that work at height is safe.");
        assertThat(status(entry)).isEqualTo("CONFIRMED");
    }

    @Test
    void a_day_of_two_sites_has_an_entry_for_each_stay() {
        publish(
                visit("north-0", WallOfAll.NORTH, 0),
                visit("south-1", WallOfAll.SOUTH, 2),
                visit("north-1", WallOfAll.NORTH, 4));

        assertThat(events()).hasSize(3).extracting(VEvent::getUid).doesNotHaveDuplicates();
    }

    @Test
    void an_update_has_the_same_uid_and_a_higher_sequence_and_what_stays_keeps_both() {
        publish(visit("north-0", WallOfAll.NORTH, 0), visit("south-1", WallOfAll.SOUTH, 4));
        var before = events();

        publish(visit("north-0", WallOfAll.NORTH, 1), visit("south-1", WallOfAll.SOUTH, 4));
        var after = events();

        assertThat(uids(after)).isEqualTo(uids(before));
        assertThat(sequences(before)).containsExactly(0, 0);
        assertThat(sequences(after)).containsExactly(1, 0);
        assertThat(after.getFirst().getDateStart().getValue()).isEqualTo(SEVEN.plusSeconds(3600));
    }

    @Test
    void another_opening_at_the_same_time_is_an_update_too() {
        publish(visit("north-0", WallOfAll.NORTH, 0));
        events();
        publish(visit("north-2", WallOfAll.NORTH, 0));

        assertThat(sequences(events())).containsExactly(1);
    }

    @Test
    void what_the_next_plan_no_longer_has_is_cancelled_and_may_come_back() {
        publish(visit("north-0", WallOfAll.NORTH, 0));
        var before = only(events());

        publish(visit("south-1", WallOfAll.SOUTH, 0));
        var cancelled = one(events(), before);

        assertThat(status(cancelled)).isEqualTo("CANCELLED");
        assertThat(cancelled.getSequence().getValue()).isEqualTo(1);

        publish(visit("north-0", WallOfAll.NORTH, 0));
        var back = one(events(), before);

        assertThat(status(back)).isEqualTo("CONFIRMED");
        assertThat(back.getSequence().getValue()).isEqualTo(2);
    }

    @Test
    void what_is_over_when_a_plan_is_published_is_not_cancelled_by_it() {
        Instant lastWeek = Instant.now().minusSeconds(7 * 86_400);
        publish(at("north-0", WallOfAll.NORTH, lastWeek));
        events();
        publish(visit("south-1", WallOfAll.SOUTH, 0));

        assertThat(events()).extracting(CrewCalendarsDbTests::status).containsExactly("CONFIRMED", "CONFIRMED");
    }

    @Test
    void a_stay_that_has_begun_ends_when_the_plan_that_drops_it_is_published() {
        Instant begun = Instant.now().minusSeconds(600);
        publish(at("north-0", WallOfAll.NORTH, begun));
        var before = only(events());
        publish(visit("south-1", WallOfAll.SOUTH, 0));

        var cut = one(events(), before);

        assertThat(status(cut)).isEqualTo("CONFIRMED");
        assertThat(cut.getDateEnd().getValue()).isBefore(before.getDateEnd().getValue());
        assertThat(cut.getSequence().getValue()).isEqualTo(1);
        assertThat(cut.getDescription().getValue()).startsWith("Ends here: ");
    }

    @Test
    void what_is_long_over_is_told_no_more() {
        publish(
                at("north-0", WallOfAll.NORTH, Instant.now().minus(CrewCalendars.KEPT.plusDays(1))),
                visit("south-1", WallOfAll.SOUTH, 0));

        assertThat(events()).hasSize(1);
    }

    @Test
    void a_calendar_that_nothing_changed_is_the_same_to_the_byte() {
        publish(visit("north-0", WallOfAll.NORTH, 0));

        assertThat(read()).isEqualTo(read());
    }

    /** RFC 5545, 3.1 and 3.3.11. */
    @Test
    void odd_names_come_through_whole_and_no_line_is_longer_than_75_octets() {
        publish(visit("south-1", WallOfAll.SOUTH, 0));

        assertThat(only(events()).getLocation().getValue())
                .isEqualTo(ODD_NAME + ", 9 Pier, old \\ yard, Žižkov 北京, ZZ 00001");
        assertThat(read().text().split("\r\n")).allSatisfy(line -> {
            assertThat(line).doesNotContain("\n", "\r");
            assertThat(line.getBytes(java.nio.charset.StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75);
        });
    }

    @Test
    void a_calendar_without_visits_is_still_a_calendar() {
        publish(new Visit[0]);

        var read = Biweekly.parse(read().text()).first();

        assertThat(read.getEvents()).isEmpty();
        // one component at least (RFC 5545, 3.6), which that library keeps apart from the others
        assertThat(read.getTimezoneInfo().getComponents()).hasSize(1);
    }

    /** 900 and 1500 mm are 35 7/16 and 59 1/16 inches, to the nearest sixteenth. */
    @Test
    void a_link_tells_in_the_language_that_it_was_made_for_and_leaves_others_as_they_were() {
        publish(visit("north-0", WallOfAll.NORTH, 0));
        var english = only(events());
        String first = secret;
        secret = links.make(WallOfAll.SCHEDULER, folder, crew, new Reading(Language.SPANISH, Ruler.INCHES))
                .secret();

        var spanish = only(events());
        String told = spanish.getDescription().getValue();

        assertThat(spanish.getSummary().getValue()).isEqualTo("Site north: instalar 1 abertura");
        assertThat(told).contains("35 7/16 × 59 1/16 pulg", "trabajo en altura", "Llevar: 1 ventana");
        assertThat(new SpanishWords(List.of("Site north street America Los_Angeles")).strange(told))
                .isEmpty();
        secret = first;
        assertThat(uids(events()))
                .containsExactly(english.getUid().getValue())
                .doesNotContain(spanish.getUid().getValue());
        assertThat(sequences(events())).containsExactly(0);
    }

    @Test
    void a_revoked_or_unknown_link_opens_nothing() {
        var made = links.make(WallOfAll.SCHEDULER, folder, crew);
        assertThat(calendars.read(made.secret())).isPresent();

        assertThat(links.revoke(WallOfAll.SCHEDULER, made.link().id())).isTrue();

        assertThat(calendars.read(made.secret())).isEmpty();
        assertThat(calendars.read("unknown")).isEmpty();
        assertThat(calendars.read(secret)).isPresent();
        assertThat(links.revoke(WallOfAll.SCHEDULER, made.link().id())).isFalse();
    }

    private void publish(Visit... visits) {
        Instant start = SEVEN.minusSeconds(86_400);
        var plan = new Plan(
                start,
                start.plusSeconds(5 * 86_400),
                List.of(visits),
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
        var result = publications.publish(WallOfAll.SCHEDULER, folder, plans.save(folder, plan), newest);
        newest = ((Published) result).publication().id();
    }

    private Visit visit(String opening, SiteId site, int hour) {
        return at(opening, site, SEVEN.plusSeconds(hour * 3600L));
    }

    private Visit at(String opening, SiteId site, Instant start) {
        LocalDate date = start.equals(SEVEN) ? DAY : LocalDate.ofInstant(start, java.time.ZoneOffset.ofHours(-7));
        int sequence = Math.toIntExact(Math.floorMod(start.getEpochSecond(), 86_400L)) + 1;
        return new Visit(
                crew,
                date,
                sequence,
                new FacadeId(site, "street"),
                opening.equals("north-1") ? 2 : 1,
                new OpeningId(opening),
                Task.INSTALL,
                start,
                start.plusSeconds(3600));
    }

    private Feed read() {
        return calendars.read(secret).orElseThrow();
    }

    private List<VEvent> events() {
        var calendar = Biweekly.parse(read().text()).first();
        assertThat(calendar.validate(biweekly.ICalVersion.V2_0).isEmpty())
                .as("%s", calendar.validate(biweekly.ICalVersion.V2_0))
                .isTrue();
        return calendar.getEvents();
    }

    private static VEvent only(List<VEvent> events) {
        assertThat(events).hasSize(1);
        return events.getFirst();
    }

    private static VEvent one(List<VEvent> events, VEvent like) {
        return events.stream()
                .filter(event -> event.getUid().equals(like.getUid()))
                .findFirst()
                .orElseThrow();
    }

    private static String status(VEvent event) {
        Status status = event.getStatus();
        return status.getValue();
    }

    private static List<String> uids(List<VEvent> events) {
        return events.stream().map(event -> event.getUid().getValue()).toList();
    }

    private static List<Integer> sequences(List<VEvent> events) {
        return events.stream().map(event -> event.getSequence().getValue()).toList();
    }
}
