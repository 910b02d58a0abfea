package drylap.planning;

import static drylap.persistence.jooq.Tables.PLAN;
import static drylap.persistence.jooq.Tables.VISIT;

import drylap.crews.Crew;
import drylap.crews.Crews;
import drylap.crews.Shift;
import drylap.crews.Shifts;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.planning.HandResult.Refused;
import drylap.security.Person;
import drylap.sites.Sites;
import drylap.speech.Saying;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Crews and their days put in by hand. A crew belongs to no site, so whoever does it must see the whole folder. */
@Service
public final class CrewsByHand {
    private static final int LONGEST_NAME = 40;

    private final DSLContext db;
    private final Sites sites;
    private final Crews crews;
    private final Shifts shifts;
    private final HandChanges hand;

    CrewsByHand(DSLContext db, Sites sites, Crews crews, Shifts shifts, HandChanges hand) {
        this.db = db;
        this.sites = sites;
        this.crews = crews;
        this.shifts = shifts;
        this.hand = hand;
    }

    public HandResult add(Person who, FolderId folder, CrewDraft draft) {
        hand.demandWhole(who, folder);
        return hand.change(folder, () -> {
            Optional<Saying> wrong = against(folder, draft)
                    .or(() -> againstPeople(draft.people()))
                    .or(draft.days()::problem);
            if (wrong.isPresent()) return new Refused(wrong.get());
            var crew = crew(draft);
            List<Shift> days = shifts(crew, draft.days());
            if (days.isEmpty()) return noDay(draft.days());
            crews.add(folder, crew);
            shifts.replace(folder, crew.id(), draft.days().from(), days);
            return hand.saved(
                    who,
                    folder,
                    null,
                    "added crew %s (%s) with %d days"
                            .formatted(crew.id(), crew.trade().code(), days.size()));
        });
    }

    private static Crew crew(CrewDraft draft) {
        var id = new CrewId(draft.name());
        return new Crew(id, draft.trade(), Set.of(), draft.base(), draft.zone(), draft.people());
    }

    /**
     * Says how many a crew are; no minute of work changes by it.
     *
     * @param people none: not told any more
     */
    public HandResult setPeople(Person who, FolderId folder, CrewId id, @Nullable Integer people) {
        hand.demandWhole(who, folder);
        return hand.change(folder, () -> {
            Optional<Saying> wrong = againstPeople(people);
            if (wrong.isPresent()) return new Refused(wrong.get());
            if (find(folder, id).isEmpty()) return gone(id);
            crews.setPeople(folder, id, people);
            String many = people == null ? "not told" : people.toString();
            return hand.saved(who, folder, null, "people of crew %s: %s".formatted(id, many));
        });
    }

    private static Optional<Saying> againstPeople(@Nullable Integer people) {
        return people == null || (people >= Crew.FEWEST_PEOPLE && people <= Crew.MOST_PEOPLE)
                ? Optional.empty()
                : Optional.of(Saying.of(
                        "the crew has {0} people; accepted: {1} to {2}, or blank",
                        people, Crew.FEWEST_PEOPLE, Crew.MOST_PEOPLE));
    }

    private static Refused gone(CrewId id) {
        return new Refused(Saying.of("the job folder has no crew {0} any more; look again", id));
    }

    /** Puts these days in the place of all from the first of them on. */
    public HandResult setDays(Person who, FolderId folder, CrewId id, CrewDays days) {
        hand.demandWhole(who, folder);
        return hand.change(folder, () -> {
            Optional<Saying> wrong = days.problem();
            if (wrong.isPresent()) return new Refused(wrong.get());
            Optional<Crew> crew = find(folder, id);
            if (crew.isEmpty()) return gone(id);
            List<Shift> all = shifts(crew.get(), days);
            if (all.isEmpty()) return noDay(days);
            shifts.replace(folder, id, days.from(), all);
            return hand.saved(
                    who, folder, null, "crew %s comes on %d days from %s on".formatted(id, all.size(), days.from()));
        });
    }

    /** Takes away a crew that no plan names. */
    public HandResult remove(Person who, FolderId folder, CrewId id) {
        hand.demandWhole(who, folder);
        return hand.change(folder, () -> {
            if (planned(folder, id))
                return new Refused(Saying.of(
                        "plans name crew {0}, so that it stays; add an absence for days on which it does not come",
                        id));
            crews.remove(folder, id);
            return hand.saved(who, folder, null, "removed crew %s".formatted(id));
        });
    }

    private boolean planned(FolderId folder, CrewId id) {
        return db.fetchExists(db.selectOne()
                .from(VISIT)
                .join(PLAN)
                .on(PLAN.ID.eq(VISIT.PLAN_ID))
                .where(PLAN.FOLDER_ID.eq(folder.value()), VISIT.CREW.eq(id.value())));
    }

    private Optional<Saying> against(FolderId folder, CrewDraft draft) {
        String name = draft.name();
        if (name.isBlank()) return notAccepted(Saying.of("the crew's name is blank"));
        if (name.length() > LONGEST_NAME)
            return notAccepted(Saying.of("the crew's name has {0} characters", name.length()));
        boolean taken = find(folder, new CrewId(name)).isPresent()
                || sites.of(folder).stream().anyMatch(site -> site.id().value().equals(name));
        return taken ? notAccepted(Saying.of("\"{0}\" is taken", name)) : Optional.empty();
    }

    private static Optional<Saying> notAccepted(Saying wrong) {
        return Optional.of(Saying.of(
                "{0}; accepted: 1 to {1} characters, a name that no crew and no site has", wrong, LONGEST_NAME));
    }

    private static Refused noDay(CrewDays days) {
        return new Refused(Saying.of(
                "none of the chosen days of the week lies between {0} and {1}; accepted: at least one",
                days.from(), days.until()));
    }

    private static List<Shift> shifts(Crew crew, CrewDays days) {
        return days.dates()
                .map(date -> new Shift(
                        crew.id(),
                        date,
                        days.start(),
                        days.end(),
                        days.breakStart(),
                        days.breakEnd(),
                        null,
                        crew.zone()))
                .toList();
    }

    private Optional<Crew> find(FolderId folder, CrewId id) {
        return crews.of(folder).stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
