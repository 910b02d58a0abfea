package drylap.demo;

import drylap.security.Person;
import java.util.List;
import java.util.stream.Collectors;

/** A database that others keep has people of the sample in it. */
final class DemoPeopleRefused extends RuntimeException {
    DemoPeopleRefused(List<Person> people) {
        super("the database has people of the sample, whose passwords everybody knows: "
                + people.stream().map(Person::signInName).collect(Collectors.joining(", "))
                + ". Give them passwords of their own or sign them off, or set DRYLAP_DEMO_PEOPLE=allow for a trial.");
    }
}
