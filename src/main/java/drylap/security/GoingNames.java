package drylap.security;

import drylap.kernel.PersonId;
import drylap.security.TakingAway.Rows;
import drylap.security.TextPlaces.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import tools.jackson.databind.json.JsonMapper;

/**
 * The names of someone who is taken away, in the transaction that does it: the database lets what only grows change there, and only so
 * that one of these becomes what stands for it.
 */
final class GoingNames {
    private static final String HISTORY = "change_log";
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern NO_LETTER = Pattern.compile("([^\\p{L}\\p{N}])");

    private final DSLContext db;
    private final PersonId id;
    private final List<String> names;
    private final List<String> ofPeople;
    private final Map<String, List<Place>> places;

    /** @param name as it is now; those that they had before are looked for in what they did */
    GoingNames(DSLContext db, PersonId id, String name) {
        this.db = db;
        this.id = id;
        this.names = new ArrayList<>(List.of(name));
        ofPeople = TextPlaces.ofPeople(db);
        places = TextPlaces.all(db);
        for (String table : ofPeople)
            for (String other : db.fetch(
                            "select distinct person from %s where person_id = ?".formatted(table), id.value())
                    .getValues(0, String.class)) if (!names.contains(other) && !isPlaceholder(other)) names.add(other);
    }

    private boolean isPlaceholder(String other) {
        return other.equals(TakingAway.placeholder(id));
    }

    /** Where words stand, by table. */
    Map<String, List<Place>> places() {
        return places;
    }

    List<String> names() {
        return names;
    }

    /** Tells the database which names go; forgotten with the end of the transaction. */
    void tell() {
        var going = Map.of(
                "placeholder",
                TakingAway.placeholder(id),
                "names",
                names.stream()
                        .sorted(Comparator.comparingInt(String::length).reversed())
                        .map(GoingNames::pattern)
                        .toList());
        db.fetch(
                "select set_config('drylap.names_going', ?, true)",
                JsonMapper.shared().writeValueAsString(going));
    }

    /**
     * Whole words, as people write them: of more than one, whatever the case of their letters and the space between; one by itself, which may
     * be a usual word too, in its own letters only.
     */
    private static Map<String, String> pattern(String name) {
        String words = SPACES.splitAsStream(name.strip())
                .map(word -> NO_LETTER.matcher(word).replaceAll("\\\\$1"))
                .collect(Collectors.joining("\\s+"));
        boolean several = SPACES.matcher(name.strip()).find();
        return Map.of("pattern", "(?<!\\w)" + words + "(?!\\w)", "flags", several ? "gi" : "g");
    }

    /** Takes the names out of all that may change but people and the history; the rows that did, by table. */
    List<Rows> takeOut() {
        List<Rows> changed = new ArrayList<>();
        places.forEach((table, all) -> {
            if (table.equals("person") || table.equals(HISTORY)) return;
            long rows = takeOut(table, all);
            if (rows > 0) changed.add(new Rows(table, rows));
        });
        long answers = db.execute("""
                update kept_answer set body = convert_to(name_taken_out(convert_from(body, 'UTF8')), 'UTF8')
                where content_type like '%json%' and name_taken_out(convert_from(body, 'UTF8')) <> convert_from(body, 'UTF8')""");
        if (answers > 0) changed.add(new Rows("kept_answer", answers));
        return changed;
    }

    /** The same of the history's lines. */
    long takeOutOfHistory() {
        return takeOut(HISTORY, places.getOrDefault(HISTORY, List.of()));
    }

    /** A name beside the number of someone else is theirs. */
    private long takeOut(String table, List<Place> all) {
        var changing = all.stream().filter(Place::changes).toList();
        if (changing.isEmpty()) return 0;
        String mine = ofPeople.contains(table) ? "(person_id is null or person_id = %d)".formatted(id.value()) : "true";
        String sets = changing.stream()
                .map(one -> "%1$s = case when %2$s then %3$s else %1$s end"
                        .formatted(TextPlaces.quoted(one.column()), condition(one, mine), one.without()))
                .collect(Collectors.joining(", "));
        String any = changing.stream()
                .map(one -> "(%s and %s)".formatted(condition(one, mine), one.holdsAName()))
                .collect(Collectors.joining(" or "));
        return db.execute("update %s set %s where %s".formatted(TextPlaces.quoted(table), sets, any));
    }

    private static String condition(Place place, String mine) {
        return place.column().equals("person") ? mine : "true";
    }

    /** Rows in which the same words stay, by table. */
    List<Rows> staying() {
        List<Rows> staying = new ArrayList<>();
        places.forEach((table, all) -> {
            String any = all.stream()
                    .filter(one -> !one.changes() && !table.equals("person"))
                    .map(one -> "(%s)".formatted(one.holdsAName()))
                    .collect(Collectors.joining(" or "));
            if (any.isEmpty()) return;
            long rows = db.fetchSingle("select count(*) from %s where %s".formatted(TextPlaces.quoted(table), any))
                    .get(0, Long.class);
            if (rows > 0) staying.add(new Rows(table, rows));
        });
        return staying;
    }
}
