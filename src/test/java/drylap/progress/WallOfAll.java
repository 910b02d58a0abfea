package drylap.progress;

import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.Variant;
import drylap.crews.Crew;
import drylap.crews.TravelTimes;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.LabourTable;
import drylap.security.Person;
import drylap.security.Role;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A folder with an opening of every assembly at the site "north", half of them with a water test and none begun, an opening
 * "south-1" (method B, drained, one barrier) at the site "south", and a crew of every trade. With the people who work there.
 */
public final class WallOfAll {
    public static final SiteId NORTH = new SiteId("north");
    public static final SiteId SOUTH = new SiteId("south");
    public static final Instant IMPORTED = Instant.parse("2026-04-10T15:00:00Z");

    public static final Person SCHEDULER = person(1, "Scheduler", Role.SCHEDULER, Reach.EVERYWHERE, null);
    public static final Person WINDOW = person(2, "Window", Role.WINDOW_CREW, Reach.of(Set.of(NORTH)), "window-crew");
    public static final Person WRAP = person(3, "Wrap", Role.FOLLOW_ON, Reach.of(Set.of(NORTH)), "wrap-crew");
    public static final Person SIDING = person(4, "Siding", Role.FOLLOW_ON, Reach.of(Set.of(NORTH)), "siding-crew");
    public static final Person TESTER = person(5, "Tester", Role.TESTER, Reach.of(Set.of(NORTH)), "tester-crew");
    public static final Person ADMINISTRATOR = person(6, "Administrator", Role.ADMINISTRATOR, Reach.EVERYWHERE, null);
    public static final Person ELSEWHERE =
            person(7, "Elsewhere", Role.WINDOW_CREW, Reach.of(Set.of(SOUTH)), "window-crew");

    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    private static final GeoPoint PLACE = new GeoPoint(47.6, -122.3);

    private WallOfAll() {}

    public static JobFolder folder() {
        List<Opening> openings = new ArrayList<>();
        for (Variant variant : Variant.all()) openings.add(opening(variant, openings.size()));
        openings.add(with(openings.get(index(Method.B)), "south-1", SOUTH, 0, null));
        return of(openings);
    }

    /** The same with one opening of a method imported as done up to a line. */
    public static JobFolder folder(Method method, int done, @Nullable Instant doneAt) {
        List<Opening> openings = new ArrayList<>(folder().openings());
        Opening bare = openings.get(index(method));
        openings.set(index(method), with(bare, bare.id().value(), NORTH, done, doneAt));
        return of(openings);
    }

    /** The drained opening with one barrier of a method; that of A and B1 has a water test. */
    public static OpeningId plain(Method method) {
        return new OpeningId("north-" + index(method));
    }

    private static int index(Method method) {
        for (int i = 0; i < Variant.all().size(); i++) if (Variant.all().get(i).method() == method) return i;
        throw new IllegalStateException();
    }

    private static Opening opening(Variant variant, int number) {
        return new Opening(
                new OpeningId("north-" + number),
                new FacadeId(NORTH, "street"),
                1 + number % 3,
                900,
                1500,
                Frame.VINYL,
                variant.method(),
                variant.approach(),
                variant.secondLayer(),
                LocalDate.of(2026, 4, 1),
                number % 4 == 0 && variant.method() != Method.A1,
                0,
                0,
                null);
    }

    private static Opening with(Opening like, String id, SiteId site, int done, @Nullable Instant doneAt) {
        return new Opening(
                new OpeningId(id),
                new FacadeId(site, "street"),
                like.level(),
                like.widthMm(),
                like.heightMm(),
                like.frame(),
                like.method(),
                like.approach(),
                like.secondLayer(),
                like.deliveredOn(),
                like.waterTest(),
                like.priority(),
                done,
                doneAt);
    }

    private static JobFolder of(List<Opening> openings) {
        return new JobFolder(
                List.of(site(NORTH), site(SOUTH)),
                List.of(facade(NORTH), facade(SOUTH)),
                openings,
                Arrays.stream(Trade.values())
                        .map(trade -> new Crew(new CrewId(trade.code() + "-crew"), trade, Set.of(), PLACE, ZONE))
                        .toList(),
                List.of(),
                new TravelTimes(Map.of()),
                List.of(),
                new LabourTable(List.of()),
                Rules.STANDARD,
                List.of());
    }

    private static Site site(SiteId id) {
        return new Site(id, "Site " + id, PLACE, ZONE, Terrain.values()[0]);
    }

    private static Facade facade(SiteId site) {
        return new Facade(new FacadeId(site, "street"), 180, null);
    }

    private static Person person(long id, String name, Role role, Reach reach, @Nullable String crew) {
        return new Person(
                new PersonId(id),
                name.toLowerCase(java.util.Locale.ROOT),
                name,
                role,
                reach,
                crew == null ? null : new CrewId(crew),
                false);
    }
}
