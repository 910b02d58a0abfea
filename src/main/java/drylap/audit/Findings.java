package drylap.audit;

import drylap.planning.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects breaches and words them: times in the zone of the site, so that a foreman knows them from the sheet. */
final class Findings {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM uuuu HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

    private final JobBook book;
    private final List<Breach> breaches = new ArrayList<>();

    Findings(JobBook book) {
        this.book = book;
    }

    void add(ContractRule rule, String where, String what, Object... values) {
        breaches.add(new Breach(rule, where, what.formatted(values)));
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

    String where(Visit visit) {
        return "crew %s, %s of %s, %s".formatted(visit.crew(), visit.task().code(), visit.opening(), time(visit));
    }

    private String time(Visit visit) {
        return time(visit.start(), zoneOf(visit));
    }

    /** The zone in which a visit's times are told; its site's, or UTC where its opening is unknown. */
    ZoneId zoneOf(Visit visit) {
        return book.opening(visit.opening())
                .map(opening -> book.site(opening.facade().site()).zone())
                .orElse(ZoneId.of("UTC"));
    }

    static String time(Instant instant, ZoneId zone) {
        return instant.atZone(zone).format(TIME);
    }

    String time(Instant instant, Visit visit) {
        return time(instant, zoneOf(visit));
    }

    static String day(LocalDate date) {
        return date.format(DAY);
    }
}
