package drylap.audit;

import drylap.kernel.Course;
import drylap.planning.TaskWords;
import drylap.planning.Visit;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** Collects breaches and words them: times in the zone of the site, so that a foreman knows them from the sheet. */
final class Findings {
    private final JobBook book;
    private final List<Breach> breaches = new ArrayList<>();

    Findings(JobBook book) {
        this.book = book;
    }

    void add(ContractRule rule, Saying where, String what, Object... values) {
        breaches.add(new Breach(rule, where, Saying.of(what, values)));
    }

    /** Of the lists beside a plan, which only commands check: in English. */
    void plain(ContractRule rule, String where, String what) {
        breaches.add(new Breach(rule, Saying.asItIs(where), Saying.asItIs(what)));
    }

    void add(ContractRule rule, Visit visit, String what, Object... values) {
        add(rule, where(visit), what, values);
    }

    List<Breach> breaches() {
        return breaches;
    }

    long hard() {
        return breaches.stream().filter(breach -> breach.rule().hard()).count();
    }

    Saying where(Visit visit) {
        return Saying.of("crew {0}, {1}, {2}", visit.crew(), TaskWords.at(visit.task(), visit.opening()), time(visit));
    }

    private Part time(Visit visit) {
        return time(visit.start(), zoneOf(visit));
    }

    /** The zone in which a visit's times are told; its site's, or UTC where its opening is unknown. */
    ZoneId zoneOf(Visit visit) {
        return book.opening(visit.opening())
                .map(opening -> book.site(opening.facade().site()).zone())
                .orElse(ZoneId.of("UTC"));
    }

    static Part time(Instant instant, ZoneId zone) {
        return new Part.Dated(instant.atZone(zone));
    }

    static Saying course(Course course) {
        return Saying.of("{0} level {1}", course.facade(), course.level());
    }

    Part time(Instant instant, Visit visit) {
        return time(instant, zoneOf(visit));
    }

    static Part day(LocalDate date) {
        return new Part.Dated(date);
    }
}
