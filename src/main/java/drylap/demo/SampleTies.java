package drylap.demo;

import static drylap.persistence.jooq.Tables.CREW;
import static drylap.persistence.jooq.Tables.CREW_DAY_BOOKING;
import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.ODDS_RUN;
import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.PLANNING_RUN;
import static drylap.persistence.jooq.Tables.SITE;
import static drylap.persistence.jooq.Tables.STEP_MARK;
import static drylap.persistence.jooq.Tables.WINDOW_SCHEDULE;

import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.kernel.SiteId;
import drylap.platform.JobId;
import drylap.security.People;
import drylap.security.Person;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.springframework.stereotype.Service;

/** What refers to the invented folder, and what of that is not invented. Reads only. */
@Service
final class SampleTies {
    private final DSLContext db;
    private final People people;

    SampleTies(DSLContext db, People people) {
        this.db = db;
        this.people = people;
    }

    /** Whoever marks or hands over waits until this transaction ends, and then finds nothing. */
    void lock(FolderId folder) {
        db.selectFrom(JOB_FOLDER)
                .where(JOB_FOLDER.ID.eq(folder.value()))
                .forUpdate()
                .fetch();
    }

    /** What people of one's own did at it or owe to it, each a sentence; empty where nothing holds it. */
    List<Saying> own(FolderId folder) {
        List<Saying> all = new ArrayList<>();
        count(all, folder, STEP_MARK, STEP_MARK.FOLDER_ID, STEP_MARK.PERSON_ID, Saying.of("marks at its openings"));
        count(all, folder, PHOTO, PHOTO.FOLDER_ID, PHOTO.PERSON_ID, Saying.of("photos of its openings"));
        count(
                all,
                folder,
                HANDOFF_ACT,
                HANDOFF_ACT.FOLDER_ID,
                HANDOFF_ACT.PERSON_ID,
                Saying.of("acts of handing over at it"));
        count(
                all,
                folder,
                CREW_DAY_BOOKING,
                CREW_DAY_BOOKING.FOLDER_ID,
                CREW_DAY_BOOKING.PERSON_ID,
                Saying.of("booked days at it"));
        count(
                all,
                folder,
                WINDOW_SCHEDULE,
                WINDOW_SCHEDULE.FOLDER_ID,
                WINDOW_SCHEDULE.PERSON_ID,
                Saying.of("window schedules taken into it"));
        all.addAll(inItsCrews(folder));
        all.addAll(withoutAdministrator());
        return all;
    }

    private void count(
            List<Saying> all, FolderId folder, Table<?> table, Field<Long> ofFolder, Field<Long> by, Saying what) {
        List<Long> invented =
                people.everyDemo().stream().map(Person::id).map(PersonId::value).toList();
        int many = db.fetchCount(table, ofFolder.eq(folder.value()), by.notIn(invented));
        if (many > 0)
            all.add(Saying.of(
                    "There are {0} {1} that are not of the sample's own people; they would go with it.", many, what));
    }

    private List<Saying> inItsCrews(FolderId folder) {
        List<CrewId> crews = crewsOnlyOf(folder);
        return people.own().stream()
                .filter(one -> one.crew() != null && crews.contains(one.crew()))
                .map(one -> Saying.of(
                        "{0} works in crew {1} of the sample; give {0} a crew of your own first, or another role.",
                        one.name(), String.valueOf(one.crew())))
                .toList();
    }

    /** Nobody may be left behind who cannot manage people. */
    private List<Saying> withoutAdministrator() {
        List<Person> own = people.own();
        return own.isEmpty() || own.stream().anyMatch(one -> one.role().managesPeople())
                ? List.of()
                : List.of(Saying.of(
                        "Of your own people ({0}) nobody manages people; name an administrator or a contractor first.",
                        own.stream().map(Person::name).collect(Collectors.joining(", "))));
    }

    /** Runs and reckonings that were ever asked for it. */
    List<JobId> jobs(FolderId folder) {
        return db.select(PLANNING_RUN.JOB_ID)
                .from(PLANNING_RUN)
                .where(PLANNING_RUN.FOLDER_ID.eq(folder.value()))
                .unionAll(db.select(ODDS_RUN.JOB_ID).from(ODDS_RUN).where(ODDS_RUN.FOLDER_ID.eq(folder.value())))
                .fetch(row -> new JobId(row.value1()));
    }

    /** A site has the same id in every folder; those that another folder has too are not the sample's alone. */
    List<SiteId> sitesOnlyOf(FolderId folder) {
        return db.select(SITE.SITE_)
                .from(SITE)
                .where(SITE.FOLDER_ID.eq(folder.value()))
                .and(SITE.SITE_.notIn(db.select(SITE.SITE_).from(SITE).where(SITE.FOLDER_ID.ne(folder.value()))))
                .fetch(row -> new SiteId(row.value1()));
    }

    List<CrewId> crewsOnlyOf(FolderId folder) {
        return db.select(CREW.CREW_)
                .from(CREW)
                .where(CREW.FOLDER_ID.eq(folder.value()))
                .and(CREW.CREW_.notIn(db.select(CREW.CREW_).from(CREW).where(CREW.FOLDER_ID.ne(folder.value()))))
                .fetch(row -> new CrewId(row.value1()));
    }
}
