package drylap.security;

import drylap.kernel.PersonId;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.json.JsonMapper;

/** What is kept of someone, for themselves and for whoever manages people. */
@Service
public final class KeptOfPerson {
    /** Digests of passwords, tokens and links, and the secrets of hooks: they say nothing of the person and would let others in. */
    private static final Set<String> SECRET = Set.of("password_hash", "secret_hash", "secret", "nonce", "request_hash");

    private final DSLContext db;
    private final PersonRows rows;
    private final TransactionTemplate transaction;
    private final Clock clock;

    KeptOfPerson(DSLContext db, PersonRows rows, TransactionTemplate transaction, Clock clock) {
        this.db = db;
        this.rows = rows;
        this.transaction = transaction;
        this.clock = clock;
    }

    /**
     * Every row that names them, by number or by name, as JSON by table; photos as rows, without the pictures.
     *
     * @throws IllegalArgumentException where there is no such person
     */
    public String json(Person who, PersonId id) {
        who.demandInPerson(id);
        return transaction.execute(_ -> {
            var person = rows.byId(id).orElseThrow(() -> new IllegalArgumentException("there is no such person"));
            var going = new GoingNames(db, id, person.getName());
            going.tell();
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("person", id.value());
            all.put("names", going.names());
            all.put("at", clock.instant().toString());
            all.put("tables", tables(id, going));
            return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(all);
        });
    }

    private Map<String, List<Object>> tables(PersonId id, GoingNames going) {
        Map<String, List<Object>> tables = new LinkedHashMap<>();
        var numbered = numbered();
        going.places().forEach((table, places) -> {
            String named = places.stream()
                    .map(one -> "(%s)".formatted(one.holdsAName()))
                    .collect(Collectors.joining(" or "));
            String mine = numbered.containsKey(table) ? "%s = %d or ".formatted(numbered.get(table), id.value()) : "";
            var found = db.fetch("select to_jsonb(one)::text from %s one where %s%s"
                            .formatted(TextPlaces.quoted(table), mine, named))
                    .getValues(0, String.class);
            if (!found.isEmpty())
                tables.put(table, found.stream().map(KeptOfPerson::open).toList());
        });
        return tables;
    }

    /** Tables with a column that says whose a row is. */
    private Map<String, String> numbered() {
        Map<String, String> numbered = new LinkedHashMap<>(Map.of("person", "id"));
        db.fetch("""
                select table_name from information_schema.columns
                where table_schema = 'public' and column_name = 'person_id'""").forEach(row -> numbered.put(row.get(0, String.class), "person_id"));
        return numbered;
    }

    private static Object open(String row) {
        Map<String, Object> values = new LinkedHashMap<>(
                JsonMapper.shared().readerForMapOf(Object.class).<Map<String, Object>>readValue(row));
        values.keySet().removeAll(SECRET);
        return values;
    }
}
