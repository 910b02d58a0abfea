package drylap.tokens;

import static drylap.persistence.jooq.Tables.API_TOKEN;
import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@DbTest
class ApiTokensDbTests {
    private static final SiteId NORTH = new SiteId("north");
    private static final SiteId SOUTH = new SiteId("south");

    @Autowired
    ApiTokens tokens;

    @Autowired
    TestPeople people;

    @Autowired
    Clock clock;

    @Autowired
    DSLContext db;

    private Person who = new Person(new PersonId(0), "", "", Role.SCHEDULER, Reach.NOWHERE, null, false);

    @BeforeEach
    void somebody() {
        who = people.scheduler();
    }

    private TokenRequest request(PersonId owner) {
        return new TokenRequest(
                owner,
                " office ",
                EnumSet.of(Scope.READ, Scope.MARKS),
                Reach.of(Set.of(NORTH)),
                in(Duration.ofDays(1)));
    }

    private Instant in(Duration time) {
        return clock.instant().plus(time);
    }

    @Test
    void a_token_is_told_once_and_only_its_hash_is_kept() {
        var made = tokens.make(who, request(who.id()));

        assertThat(made.secret()).matches("drylap_[A-Za-z0-9_-]{43}");
        assertThat(made.token().name()).isEqualTo("office");
        var row = db.fetchSingle(API_TOKEN, API_TOKEN.ID.eq(made.token().id()));
        assertThat(row.getSecretHash()).hasSize(32);
        assertThat(new String(row.getSecretHash(), StandardCharsets.ISO_8859_1)).doesNotContain(made.secret());
        assertThat(row.toString()).doesNotContain(made.secret());
        assertThat(db.fetchExists(CHANGE_LOG, CHANGE_LOG.WHAT.contains("made token \"office\"")))
                .isTrue();
    }

    @Test
    void it_opens_for_its_person_with_its_scopes_and_sites_and_says_when_it_was_used() {
        var made = tokens.make(who, request(who.id()));
        assertThat(made.token().usedAt()).isNull();

        var program = tokens.open(made.secret()).orElseThrow();

        assertThat(program.person()).isEqualTo(who.id());
        assertThat(program.operations())
                .contains(Operation.SEE_OPENINGS, Operation.MARK_INSTALL)
                .doesNotContain(Operation.RELEASE, Operation.PUBLISH_PLAN, Operation.CHANGE_PEOPLE);
        assertThat(program.reach()).isEqualTo(Reach.of(Set.of(NORTH)));
        assertThat(tokens.seenBy(who).getFirst().usedAt()).isNotNull();
        assertThat(tokens.open(made.secret() + "x")).isEmpty();
        assertThat(tokens.open("")).isEmpty();
    }

    @Test
    void no_scope_gives_the_keys_of_the_house() {
        assertThat(Scope.operations(EnumSet.allOf(Scope.class)))
                .doesNotContain(Operation.SEE_PEOPLE, Operation.CHANGE_PEOPLE, Operation.SEE_HISTORY);
    }

    @Test
    void a_person_acted_for_may_what_both_may_where_both_may() {
        var crew = people.add(Role.WINDOW_CREW, Reach.of(Set.of(NORTH, SOUTH)), "W1");
        var acted = crew.actedFor(
                EnumSet.of(Operation.SEE_OPENINGS, Operation.ACCEPT), Reach.of(Set.of(SOUTH, new SiteId("west"))));

        assertThat(acted.may(Operation.SEE_OPENINGS, SOUTH)).isTrue();
        assertThat(acted.may(Operation.SEE_OPENINGS, NORTH)).isFalse();
        assertThat(acted.may(Operation.SEE_OPENINGS, new SiteId("west"))).isFalse();
        assertThat(acted.may(Operation.ACCEPT)).isFalse();
        assertThat(acted.may(Operation.MARK_INSTALL)).isFalse();
        assertThat(crew.inPerson()).isTrue();
        assertThat(acted.inPerson()).isFalse();
    }

    @Test
    void everybody_makes_and_revokes_their_own_and_an_administrator_those_of_all() {
        var other = people.scheduler();
        var administrator = people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> tokens.make(other, request(who.id())));

        var made = tokens.make(administrator, request(who.id()));
        assertThat(made.token().madeBy()).isEqualTo(administrator.name());
        assertThat(tokens.seenBy(other)).isEmpty();
        assertThat(tokens.seenBy(who))
                .extracting(ApiToken::id)
                .containsExactly(made.token().id());
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> tokens.revoke(other, made.token().id()));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> tokens.revoke(other, 0));

        assertThat(tokens.revoke(administrator, made.token().id())).isTrue();
        assertThat(tokens.revoke(who, made.token().id())).isFalse();
        assertThat(tokens.open(made.secret())).isEmpty();
    }

    @Test
    void no_program_makes_or_revokes_tokens() {
        var made = tokens.make(who, request(who.id()));
        var program = who.actedFor(EnumSet.allOf(Operation.class), Reach.EVERYWHERE);

        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> tokens.make(program, request(who.id())));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> tokens.revoke(program, made.token().id()));
    }

    @Test
    void what_cannot_be_is_refused_with_what_would_be_accepted() {
        var read = EnumSet.of(Scope.READ);
        refused(new TokenRequest(who.id(), " ", read, Reach.EVERYWHERE, in(Duration.ofDays(1))), "1 to 80");
        refused(
                new TokenRequest(who.id(), "x", EnumSet.of(Scope.MARKS), Reach.EVERYWHERE, in(Duration.ofDays(1))),
                "accepted: read");
        refused(new TokenRequest(who.id(), "x", read, Reach.EVERYWHERE, in(Duration.ofDays(367))), "366 days");
        refused(new TokenRequest(who.id(), "x", read, Reach.EVERYWHERE, in(Duration.ofSeconds(-1))), "366 days");
        refused(new TokenRequest(who.id(), "x", read, Reach.NOWHERE, in(Duration.ofDays(1))), "one or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tokens.make(
                        people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null), request(new PersonId(987_654_321))))
                .withMessageContaining("no such person");
    }

    private void refused(TokenRequest request, String words) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tokens.make(who, request))
                .withMessageContaining(words);
    }
}
