package drylap.demo;

import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.History;
import drylap.security.NewPerson;
import drylap.security.People;
import drylap.security.Role;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * The invented people of the sample, whose passwords everybody may read: added to a database without people, and only to one of
 * our own. On a database that others keep they are a way in for anybody, so that the application does not start with them.
 */
@Component
class DemoPeople {
    private final String sample;
    private final boolean external;
    private final boolean allowed;
    private final People people;
    private final History history;

    DemoPeople(
            @Value("${drylap.demo:}") String sample,
            @Value("${drylap.db.url:}") String url,
            @Value("${drylap.demo-people:}") String demoPeople,
            People people,
            History history) {
        this.history = history;
        this.sample = sample;
        this.external = !url.isBlank();
        this.allowed = demoPeople.equals("allow");
        this.people = people;
        refuseOnForeignDatabase();
    }

    private void refuseOnForeignDatabase() {
        if (!external || allowed || people.demo().isEmpty()) return;
        throw new DemoPeopleRefused(people.demo());
    }

    @Order(2)
    @EventListener(ApplicationReadyEvent.class)
    void add() {
        if (sample.isBlank() || external && !allowed || !people.none() || !history.isEmpty()) return;
        everybody().forEach(people::addDemo);
        System.out.println("Sample people may sign in; the page shows their names and passwords.");
    }

    /** Beside people of one's own: nobody may sign in by a password that everybody may read. */
    void addSignedOff() {
        everybody().forEach(people::addDemoSignedOff);
    }

    private static Stream<NewPerson> everybody() {
        return Stream.of(
                one("ines", "Ines Dahl", Role.SCHEDULER, Reach.EVERYWHERE, null),
                one("olaf", "Olaf Brandt", Role.ADMINISTRATOR, Reach.NOWHERE, null),
                one("mara", "Mara Quist", Role.WINDOW_CREW, Reach.EVERYWHERE, "window-1"),
                one("teo", "Teo Lund", Role.WINDOW_CREW, Reach.EVERYWHERE, "window-2"),
                one("wyn", "Wyn Abara", Role.WINDOW_CREW, at("MILL", "HILL"), "window-3"),
                one("sol", "Sol Ferro", Role.FOLLOW_ON, Reach.EVERYWHERE, "wrap-1"),
                one("pia", "Pia Novak", Role.FOLLOW_ON, at("QUAY", "NET"), "siding-1"),
                one("kit", "Kit Osei", Role.TESTER, Reach.EVERYWHERE, "test-1"));
    }

    private static NewPerson one(String signInName, String name, Role role, Reach reach, @Nullable String crew) {
        return new NewPerson(signInName, name, role, reach, crew == null ? null : new CrewId(crew));
    }

    private static Reach at(String... sites) {
        return Reach.of(List.of(sites).stream().map(SiteId::new).toList());
    }
}
