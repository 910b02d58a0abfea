package drylap.security;

import drylap.kernel.CrewId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.SiteId;
import java.util.Collection;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Someone who may sign in: who they are, what they do, and where.
 *
 * @param crew the crew that they work in, for roles that do
 * @param demo one of the invented people of the sample data
 * @param reading the language and the ruler that they chose, or the usual ones
 * @param only what a program that acts for the person may do of what the role may; none for the person itself
 * @param choosesPassword whether they have yet to choose a password in place of the one that somebody else set: until then they may nothing
 */
public record Person(
        PersonId id,
        String signInName,
        String name,
        Role role,
        Reach reach,
        @Nullable CrewId crew,
        boolean demo,
        Reading reading,
        @Nullable Set<Operation> only,
        boolean choosesPassword) {
    public Person {
        if (only != null) only = Set.copyOf(only);
    }

    /** Someone who acts in person. */
    public Person(
            PersonId id,
            String signInName,
            String name,
            Role role,
            Reach reach,
            @Nullable CrewId crew,
            boolean demo,
            Reading reading) {
        this(id, signInName, name, role, reach, crew, demo, reading, null, false);
    }

    /** Someone who acts in person and reads as is usual. */
    public Person(
            PersonId id, String signInName, String name, Role role, Reach reach, @Nullable CrewId crew, boolean demo) {
        this(id, signInName, name, role, reach, crew, demo, Reading.USUAL);
    }

    /** The same, reading otherwise. */
    public Person reading(Reading other) {
        return new Person(id, signInName, name, role, reach, crew, demo, other, only, choosesPassword);
    }

    /** The same person as a program acts for them: with what both may, where both may. */
    public Person actedFor(Set<Operation> operations, Reach where) {
        return new Person(
                id, signInName, name, role, reach.within(where), crew, demo, reading, operations, choosesPassword);
    }

    /** The same person, who signed in with a password that somebody else set. */
    Person choosingPassword() {
        return new Person(id, signInName, name, role, reach, crew, demo, reading, only, true);
    }

    /** Whether it is the person, rather than a program that acts for them. */
    public boolean inPerson() {
        return only == null;
    }

    public boolean may(Operation operation) {
        return !choosesPassword && Rights.of(role).contains(operation) && (only == null || only.contains(operation));
    }

    public boolean may(Operation operation, SiteId site) {
        return may(operation) && reach.covers(site);
    }

    /** @throws NotAllowed where the role has no such right */
    public void demand(Operation operation) {
        if (!may(operation)) throw new NotAllowed(this, operation, "anywhere");
    }

    /**
     * For what is a person's own, such as keys to the house: they look after it themselves, and whoever manages people does for all.
     *
     * @throws NotAllowed for everybody else, and for every program
     */
    public void demandInPerson(PersonId owner) {
        if (!inPerson()) throw new NotAllowed(this, Operation.CHANGE_PEOPLE, "by a program");
        if (choosesPassword) throw new NotAllowed(this, Operation.CHANGE_PEOPLE, "before they chose a password");
        if (!id.equals(owner)) demand(Operation.CHANGE_PEOPLE);
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
