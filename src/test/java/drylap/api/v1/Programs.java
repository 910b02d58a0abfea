package drylap.api.v1;

import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.Person;
import drylap.security.TestPeople;
import drylap.tokens.ApiTokens;
import drylap.tokens.Scope;
import drylap.tokens.TokenRequest;
import drylap.ui.QuayFolder;
import java.time.Clock;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;

/** Programs for tests, with tokens of real people, and a folder that they ask about. */
@Component
class Programs {
    final TestPeople people;
    final ApiTokens tokens;
    private final JobFolders folders;
    private final Plans plans;
    private final Publications publications;
    private final Clock clock;

    Programs(
            TestPeople people,
            ApiTokens tokens,
            JobFolders folders,
            Plans plans,
            Publications publications,
            Clock clock) {
        this.people = people;
        this.tokens = tokens;
        this.folders = folders;
        this.plans = plans;
        this.publications = publications;
        this.clock = clock;
    }

    /** The folder becomes the one in work. */
    FolderId published() {
        var quay = new QuayFolder().told().folder();
        FolderId folder = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publishSample(folder, plans.save(folder, plan));
        return folder;
    }

    String token(Person who, Reach reach, Set<Scope> scopes) {
        return tokens.make(
                        who,
                        new TokenRequest(
                                who.id(),
                                "program",
                                scopes,
                                reach,
                                clock.instant().plus(Duration.ofDays(1))))
                .secret();
    }

    String token(Person who) {
        return token(who, Reach.EVERYWHERE, EnumSet.allOf(Scope.class));
    }

    Program of(String address, Person who) {
        String token = token(who);
        return new Program(address, document(address, token), token, new TreeSet<>());
    }

    static Document document(String address, String token) {
        var bare = new Program(address, new Document(Program.JSON.createObjectNode()), token, new TreeSet<>());
        JsonNode read = Program.JSON.readTree(
                bare.raw(bare.at("/api/v1/openapi.json").GET()).body());
        return new Document(read);
    }

    static String key() {
        return UUID.randomUUID().toString();
    }
}
