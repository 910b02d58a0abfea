package drylap.ui.admin;

import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.security.Listed;
import drylap.security.Operation;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.ProgramLines;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.springframework.stereotype.Component;

/** For whom programs may be let in by whoever asks, and where. */
@Component
final class ProgramsDesk {
    private final SignedIn signedIn;
    private final People people;
    private final JobFolders folders;
    private final Clock clock;

    ProgramsDesk(SignedIn signedIn, People people, JobFolders folders, Clock clock) {
        this.signedIn = signedIn;
        this.people = people;
        this.folders = folders;
        this.clock = clock;
    }

    Person who() {
        return signedIn.person();
    }

    Instant now() {
        return clock.instant();
    }

    Speech say() {
        return new Speech(signedIn.reading());
    }

    ProgramLines lines() {
        return new ProgramLines(say(), ZoneId.systemDefault(), now());
    }

    /** Oneself; for whoever manages people, everybody who may sign in. */
    List<Person> people() {
        var who = who();
        return who.may(Operation.CHANGE_PEOPLE)
                ? people.all(who).stream()
                        .filter(Listed::active)
                        .map(Listed::person)
                        .toList()
                : List.of(who);
    }

    List<SiteId> sites() {
        var who = who();
        return folders.knownSites().stream()
                .filter(site -> who.may(Operation.CHANGE_PEOPLE) || who.reach().covers(site))
                .toList();
    }
}
