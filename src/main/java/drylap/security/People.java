package drylap.security;

import drylap.kernel.ChangedMeanwhile;
import drylap.kernel.Coded;
import drylap.kernel.Language;
import drylap.kernel.PersonId;
import drylap.kernel.Reading;
import drylap.persistence.jooq.tables.records.PersonRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The people who may sign in. */
@Service
public final class People {
    public static final String TOPIC = "people";

    private final PersonRows rows;
    private final TransactionTemplate transaction;
    private final History history;
    private final News news;
    private final Clock clock;

    People(PersonRows rows, TransactionTemplate transaction, History history, News news, Clock clock) {
        this.rows = rows;
        this.transaction = transaction;
        this.history = history;
        this.news = news;
        this.clock = clock;
    }

    public List<Listed> all(Person who) {
        who.demand(Operation.SEE_PEOPLE);
        return rows.all().stream()
                .map(row -> new Listed(rows.person(row), row.getActive(), row.getTakenAway(), row.getVersion()))
                .toList();
    }

    /**
     * The person chooses a password of their own before anything else.
     *
     * @throws IllegalArgumentException where the person or the password cannot be, with what would be accepted
     */
    public PersonId add(Person who, NewPerson person, String password) {
        who.demand(Operation.CHANGE_PEOPLE);
        checked(person);
        checked(password, person.signInName(), person.name());
        return transaction.execute(_ -> {
            var id = insert(person, password, false);
            rows.passwordGiven(id, clock.instant());
            say(
                    who,
                    "added %s as %s, who is to choose a password"
                            .formatted(person.name(), person.role().words()));
            return id;
        });
    }

    /**
     * Changes all but the password; the person's rights change with their next click.
     *
     * @throws ChangedMeanwhile where the version is another by now
     * @throws IllegalArgumentException where the person cannot be so, or nobody would be left to manage people
     */
    public void change(Person who, PersonId id, int version, NewPerson person, boolean active) {
        who.demand(Operation.CHANGE_PEOPLE);
        checked(person);
        transaction.executeWithoutResult(_ -> {
            int administrators = rows.activeAdministrators();
            stillThere(id);
            boolean wasOne = rows.byId(id)
                    .filter(row -> row.getActive()
                            && Coded.of(Role.class, row.getRole()).managesPeople())
                    .isPresent();
            if (wasOne && administrators == 1 && !(active && person.role().managesPeople()))
                throw new Unfit(Saying.of("{0} is the last administrator: name another one first", person.name()));
            if (!unlessTaken(person, () -> rows.change(id, version, person, active)))
                throw new ChangedMeanwhile(person.name());
            say(who, "changed %s: %s%s".formatted(person.name(), person.role().words(), active ? "" : ", signed off"));
        });
    }

    /**
     * Sets someone's password, and ends their sessions. Whoever did not set it themselves chooses another one before anything else.
     *
     * @throws IllegalArgumentException where the password cannot be, with what would be accepted
     */
    public void setPassword(Person who, PersonId id, String password) {
        boolean own = who.id().equals(id);
        if (!own) who.demand(Operation.CHANGE_PEOPLE);
        rows.byId(id).ifPresent(row -> checked(password, row.getSignInName(), row.getName()));
        String hash = Passwords.hash(password);
        transaction.executeWithoutResult(_ -> {
            stillThere(id);
            boolean instead = own && isInsteadOfGiven(id, password);
            rows.setPassword(id, hash, own ? null : clock.instant());
            rows.signOut(id, clock.instant());
            String then = own
                    ? (instead ? ", in place of the one that was set for them" : "")
                    : ", who is to choose another one";
            say(who, "set the password of %s%s".formatted(nameOf(id), then));
        });
    }

    /** @throws IllegalArgumentException where it is the very password that somebody else set */
    private boolean isInsteadOfGiven(PersonId id, String password) {
        var given = rows.byId(id).filter(row -> row.getPasswordGivenAt() != null);
        if (given.isPresent() && Passwords.matches(password, given.map(PersonRecord::getPasswordHash)))
            throw new Unfit(Saying.of("this is the password that was set for you; accepted: another one"));
        return given.isPresent();
    }

    /** Ends every session of the person that began before now, on every node. */
    public void signOutEverywhere(Person who, PersonId id) {
        if (!who.id().equals(id)) who.demand(Operation.CHANGE_PEOPLE);
        transaction.executeWithoutResult(_ -> {
            rows.signOut(id, clock.instant());
            say(who, "signed %s out everywhere".formatted(nameOf(id)));
        });
    }

    /** How this person reads from now on. */
    public void read(Person who, Reading reading) {
        rows.setReading(who.id(), reading);
    }

    /**
     * In which language someone came in.
     *
     * @param chosen said by themselves at the door, so that it takes the place of any before; else it is their browser's
     */
    public void cameIn(PersonId who, Language language, boolean chosen) {
        rows.setLanguage(who, language, chosen);
    }

    /** Someone of the sample data, whose password everybody knows. */
    public List<Person> demo() {
        return rows.all().stream()
                .filter(row -> row.getDemo() && row.getActive())
                .map(rows::person)
                .toList();
    }

    /** For the sample only. */
    public void addDemo(NewPerson person) {
        transaction.executeWithoutResult(_ -> insert(person, DemoPassword.of(person.signInName()), true));
    }

    /** For the sample only, beside people of one's own: nobody knows the password, and nobody is let in. */
    public void addDemoSignedOff(NewPerson person) {
        transaction.executeWithoutResult(_ -> rows.signOff(insert(person, Passwords.random(), true)));
    }

    /** Everybody of the sample, those signed off too. */
    public List<Person> everyDemo() {
        return rows.demo().stream().map(rows::person).toList();
    }

    /** Takes everybody of the sample away; whoever has a password of their own is nobody of the sample any more. */
    public void removeDemo() {
        rows.removeDemo();
        news.tell(new NewsItem(TOPIC, 0, null, ""));
    }

    /** Everybody who is not of the sample, whether they may sign in or not. */
    public List<Person> own() {
        return rows.all().stream()
                .filter(row -> !row.getDemo())
                .map(rows::person)
                .toList();
    }

    public boolean none() {
        return rows.none();
    }

    /** The roles of everybody who may sign in. */
    public Set<Role> roles() {
        return rows.all().stream()
                .filter(row -> row.getActive())
                .map(row -> Coded.of(Role.class, row.getRole()))
                .collect(Collectors.toSet());
    }

    /**
     * The first person of a database without people.
     *
     * @return whether there was nobody yet
     * @throws IllegalArgumentException where the person or the password cannot be, with what would be accepted
     */
    boolean addFirst(NewPerson person, String password) {
        return Boolean.TRUE.equals(transaction.execute(_ -> {
            if (!rows.noneForSure()) return false;
            insert(person, password, false);
            return true;
        }));
    }

    private PersonId insert(NewPerson person, String password, boolean demo) {
        checked(person);
        String hash = Passwords.hash(password);
        return unlessTaken(person, () -> rows.add(person, hash, demo));
    }

    private static <T> T unlessTaken(NewPerson person, java.util.function.Supplier<T> change) {
        try {
            return change.get();
        } catch (DuplicateKeyException taken) {
            throw new Unfit(Saying.of("sign-in name \"{0}\" is taken; choose another one", person.signInName()));
        }
    }

    private static void checked(NewPerson person) {
        person.problem().ifPresent(words -> {
            throw new Unfit(words);
        });
    }

    private static void checked(String password, String... names) {
        Passwords.against(password, names).ifPresent(words -> {
            throw new Unfit(words);
        });
    }

    private void stillThere(PersonId id) {
        if (rows.byId(id).filter(PersonRecord::getTakenAway).isPresent())
            throw new Unfit(Saying.of("{0} was taken away for good; add the person anew", nameOf(id)));
    }

    private String nameOf(PersonId id) {
        return rows.byId(id).orElseThrow().getName();
    }

    private void say(Person who, String what) {
        history.note(who, null, what);
        news.tell(new NewsItem(TOPIC, 0, null, ""));
    }
}
