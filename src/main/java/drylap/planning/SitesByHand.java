package drylap.planning;

import static drylap.persistence.jooq.Tables.RULE_CHANGE;
import static drylap.persistence.jooq.Tables.WINDOW_SCHEDULE;

import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.HandResult.Refused;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Facade;
import drylap.sites.Facades;
import drylap.sites.Site;
import drylap.sites.Sites;
import drylap.sites.StreetAddress;
import drylap.sites.Terrain;
import drylap.speech.Saying;
import java.text.Normalizer;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Sites and their walls put in by hand, into a folder of one's own; the first site opens one. */
@Service
public final class SitesByHand {
    private static final int LONGEST_ID = 12;
    private static final double DEGREES_IN_AN_HOUR = 15;
    private static final double SECONDS_IN_AN_HOUR = 3600;
    private static final double HOURS_IN_A_DAY = 24;
    /** The far west of China is three hours behind its clock; common knowledge, no source. */
    private static final double MOST_HOURS_OFF_THE_SUN = 4;

    private final DSLContext db;
    private final Sites sites;
    private final Facades facades;
    private final HandChanges hand;

    SitesByHand(DSLContext db, Sites sites, Facades facades, HandChanges hand) {
        this.db = db;
        this.sites = sites;
        this.facades = facades;
        this.hand = hand;
    }

    /**
     * Adds a site and its first walls.
     *
     * @param folder none: a folder is opened for it
     */
    public HandResult add(Person who, @Nullable FolderId folder, SiteDraft draft, List<WallDraft> walls) {
        SiteId id = free(draft.name());
        who.demand(Operation.IMPORT_FOLDER, id);
        if (folder == null) return hand.begin(hand::open, opened -> store(who, opened, id, draft, walls));
        hand.demandWhole(who, folder);
        return hand.change(folder, () -> store(who, folder, id, draft, walls));
    }

    private HandResult store(Person who, FolderId folder, SiteId id, SiteDraft draft, List<WallDraft> walls) {
        Optional<Saying> wrong = against(folder, id, draft).or(() -> against(id, Set.of(), walls));
        if (wrong.isPresent()) return new Refused(wrong.get());
        sites.add(folder, site(id, draft, Terrain.III));
        facades.add(folder, facades(id, walls));
        return hand.saved(
                who, folder, id, "added site \"%s\" (%s) with %d walls".formatted(draft.name(), id, walls.size()));
    }

    private static Site site(SiteId id, SiteDraft draft, Terrain terrain) {
        var address = StreetAddress.read(draft.address());
        return new Site(id, draft.name(), draft.place(), draft.zone(), terrain, address);
    }

    /** Changes name, address, place and clock of a site. */
    public HandResult change(Person who, FolderId folder, SiteId id, SiteDraft draft) {
        who.demand(Operation.IMPORT_FOLDER, id);
        return hand.change(folder, () -> {
            Optional<Site> before = find(folder, id);
            if (before.isEmpty()) return gone(id);
            Optional<Saying> wrong = against(folder, id, draft);
            if (wrong.isPresent()) return new Refused(wrong.get());
            sites.change(folder, site(id, draft, before.get().terrain()));
            return hand.saved(who, folder, id, "changed site \"%s\" (%s)".formatted(draft.name(), id));
        });
    }

    /** Takes away a site at which there is nothing but walls. */
    public HandResult remove(Person who, FolderId folder, SiteId id) {
        who.demand(Operation.IMPORT_FOLDER, id);
        return hand.change(folder, () -> {
            if (sites.of(folder).size() == 1)
                return new Refused(
                        Saying.of("it is the only site of the job folder; change its name and place instead"));
            if (!plain(folder, id) || !sites.removeEmpty(folder, id))
                return new Refused(
                        Saying.of("site {0} has openings or rules of its own; only a site without them goes", id));
            return hand.saved(who, folder, null, "removed site %s".formatted(id));
        });
    }

    public HandResult addWalls(Person who, FolderId folder, SiteId site, List<WallDraft> walls) {
        who.demand(Operation.IMPORT_FOLDER, site);
        return hand.change(folder, () -> {
            if (find(folder, site).isEmpty()) return gone(site);
            if (walls.isEmpty())
                return new Refused(
                        Saying.of("no wall was given; accepted: one or more, each with a name and a direction"));
            Set<String> there = facades.of(folder).stream()
                    .filter(one -> one.id().site().equals(site))
                    .map(one -> key(one.id().facade()))
                    .collect(Collectors.toSet());
            Optional<Saying> wrong = against(site, there, walls);
            if (wrong.isPresent()) return new Refused(wrong.get());
            facades.add(folder, facades(site, walls));
            return hand.saved(who, folder, site, "added walls " + names(walls));
        });
    }

    /** Lets a wall face another way. */
    public HandResult turn(Person who, FolderId folder, FacadeId wall, double azimuthDeg) {
        who.demand(Operation.IMPORT_FOLDER, wall.site());
        return hand.change(folder, () -> {
            Optional<Saying> wrong = againstAzimuth(azimuthDeg);
            if (wrong.isPresent()) return new Refused(wrong.get());
            facades.turn(folder, wall, azimuthDeg);
            return hand.saved(
                    who, folder, wall.site(), "wall %s faces %s degrees".formatted(wall.facade(), azimuthDeg));
        });
    }

    /** Takes away a wall without openings. */
    public HandResult removeWall(Person who, FolderId folder, FacadeId wall) {
        who.demand(Operation.IMPORT_FOLDER, wall.site());
        return hand.change(
                folder,
                () -> facades.removeEmpty(folder, wall)
                        ? hand.saved(who, folder, wall.site(), "removed wall " + wall.facade())
                        : new Refused(
                                Saying.of("wall {0} has openings; only a wall without them goes", wall.facade())));
    }

    private Optional<Saying> against(FolderId folder, SiteId id, SiteDraft draft) {
        return HandChanges.against(Saying.of("the site's name"), draft.name())
                .or(() -> sites.of(folder).stream()
                        .filter(one -> !one.id().equals(id) && key(one.name()).equals(key(draft.name())))
                        .findFirst()
                        .map(one -> Saying.of("a site is called \"{0}\" already; accepted: another name", one.name())))
                .or(() -> StreetAddress.fault(draft.address())
                        .map(fault -> Saying.of("the address {0}; accepted: {1}", fault, StreetAddress.ACCEPTED)))
                .or(() -> againstClock(draft));
    }

    /** Clocks follow the sun within a few hours everywhere, so that a zone of another continent tells of a wrong sign or number. */
    private static Optional<Saying> againstClock(SiteDraft draft) {
        double sun = draft.place().longitude() / DEGREES_IN_AN_HOUR;
        double clock = draft.zone().getRules().getStandardOffset(Instant.EPOCH).getTotalSeconds() / SECONDS_IN_AN_HOUR;
        double apart = Math.abs(Math.IEEEremainder(clock - sun, HOURS_IN_A_DAY));
        return apart <= MOST_HOURS_OFF_THE_SUN
                ? Optional.empty()
                : Optional.of(Saying.of(
                        "the clock of {0} is {1} h off the sun at longitude {2}; accepted: a time zone of the place, "
                                + "and a minus before the longitude west of Greenwich",
                        draft.zone(), Math.round(apart), draft.place().longitude()));
    }

    private static Optional<Saying> against(SiteId site, Set<String> there, List<WallDraft> walls) {
        Set<String> names = new HashSet<>(there);
        for (WallDraft wall : walls) {
            Optional<Saying> wrong = HandChanges.against(Saying.of("a wall's name"), wall.name())
                    .or(() -> againstAzimuth(wall.azimuthDeg()));
            if (wrong.isPresent()) return wrong;
            if (!names.add(key(wall.name())))
                return Optional.of(Saying.of(
                        "a wall of site {0} is called \"{1}\" already; accepted: another name", site, wall.name()));
        }
        return Optional.empty();
    }

    private static Optional<Saying> againstAzimuth(double degrees) {
        return degrees >= 0 && degrees <= 360
                ? Optional.empty()
                : Optional.of(Saying.of(
                        "the wall's direction is {0} degrees; accepted: 0 to 360, clockwise from north", degrees));
    }

    private boolean plain(FolderId folder, SiteId site) {
        return !db.fetchExists(RULE_CHANGE, RULE_CHANGE.FOLDER_ID.eq(folder.value()), RULE_CHANGE.SITE.eq(site.value()))
                && !db.fetchExists(
                        WINDOW_SCHEDULE,
                        WINDOW_SCHEDULE.FOLDER_ID.eq(folder.value()),
                        WINDOW_SCHEDULE.SITE.eq(site.value()));
    }

    private Optional<Site> find(FolderId folder, SiteId id) {
        return sites.of(folder).stream().filter(one -> one.id().equals(id)).findFirst();
    }

    private static Refused gone(SiteId id) {
        return new Refused(Saying.of("the job folder has no site {0} any more; look again", id));
    }

    private static List<Facade> facades(SiteId site, List<WallDraft> walls) {
        return walls.stream()
                .map(wall -> new Facade(new FacadeId(site, wall.name()), wall.azimuthDeg(), null))
                .toList();
    }

    private static String names(List<WallDraft> walls) {
        return walls.stream().map(WallDraft::name).collect(Collectors.joining(", "));
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** The name in capitals, numbered where any folder has a site of that id, so that nothing of that site is taken for this one's. */
    private SiteId free(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toUpperCase(Locale.ROOT)
                .replaceAll("[^A-Z0-9 ]", "")
                .strip()
                .replaceAll(" +", "-");
        String base = plain.isEmpty() ? "SITE" : plain.substring(0, Math.min(LONGEST_ID, plain.length()));
        SiteId id = new SiteId(base);
        for (int i = 2; sites.anywhere(id); i++) id = new SiteId(base + "-" + i);
        return id;
    }
}
