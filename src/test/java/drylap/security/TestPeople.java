package drylap.security;

import drylap.kernel.CrewId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.stereotype.Component;

/** People for tests: kept in the database, so that they can sign in. */
@Component
public class TestPeople {
    public static final String PASSWORD = "for this test only";
    /** Each application context of the test run has its own. */
    private static final Set<SecurityContextHolderStrategy> KNOWN = ConcurrentHashMap.newKeySet();

    private static final AtomicInteger NUMBER = new AtomicInteger();

    private final PersonRows rows;
    private final SignIns signIns;
    private final SecurityContextHolderStrategy contexts;

    TestPeople(PersonRows rows, SignIns signIns, ObjectProvider<SecurityContextHolderStrategy> strategies) {
        contexts = strategies.getIfAvailable(SecurityContextHolder::getContextHolderStrategy);
        KNOWN.add(contexts);
        this.rows = rows;
        this.signIns = signIns;
    }

    public Person scheduler() {
        return add(Role.SCHEDULER, Reach.EVERYWHERE, null);
    }

    public Person add(Role role, Reach reach, @Nullable String crew) {
        String name = role.code() + "-" + NUMBER.incrementAndGet();
        var id = rows.add(
                new NewPerson(name, "Test " + name, role, reach, crew == null ? null : new CrewId(crew)),
                Passwords.hash(PASSWORD),
                false);
        return person(id);
    }

    public Person person(PersonId id) {
        return rows.person(rows.byId(id).orElseThrow());
    }

    /** What follows on this thread is asked by this person. */
    public Person signIn(Person who) {
        contexts.getContext()
                .setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                        new SessionPrincipal(who.id().value(), who.signInName(), signIns.now()), null, List.of()));
        return who;
    }

    public static void signOut() {
        KNOWN.forEach(SecurityContextHolderStrategy::clearContext);
    }
}
