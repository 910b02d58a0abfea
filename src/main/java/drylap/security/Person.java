package drylap.security;

import drylap.kernel.CrewId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.SiteId;
import java.util.Collection;
import org.jspecify.annotations.Nullable;

/**
 * Someone who may sign in: who they are, what they do, and where.
 *
 * @param crew the crew that they work in, for roles that do
 * @param demo one of the invented people of the sample data
 * @param reading the language and the ruler that they chose, or the usual ones
 */
public record Person(
        PersonId id,
        String signInName,
        String name,
        Role role,
        Reach reach,
        @Nullable CrewId crew,
        boolean demo,
        Reading reading) {

    /** Someone who reads as is usual. */
    public Person(
            PersonId id, String signInName, String name, Role role, Reach reach, @Nullable CrewId crew, boolean demo) {
        this(id, signInName, name, role, reach, crew, demo, Reading.USUAL);
    }

    /** The same, reading otherwise. */
    public Person reading(Reading other) {
        return new Person(id, signInName, name, role, reach, crew, demo, other);
    }

    public boolean may(Operation operation) {
        return Rights.of(role).contains(operation);
    }

    public boolean may(Operation operation, SiteId site) {
        return may(operation) && reach.covers(site);
    }

    /** @throws NotAllowed where the role has no such right */
    public void demand(Operation operation) {
        if (!may(operation)) throw new NotAllowed(this, operation, "anywhere");
    }

    /** @throws NotAllowed where the role has no such right, or the site is outside their reach */
    public void demand(Operation operation, SiteId site) {
        if (!may(operation, site)) throw new NotAllowed(this, operation, "at site " + site);
    }

    /** @throws NotAllowed where the role has no such right, or one of the sites is outside their reach */
    public void demand(Operation operation, Collection<SiteId> sites) {
        if (!may(operation) || !reach.coversAll(sites)) throw new NotAllowed(this, operation, "at every site of this");
    }
}
