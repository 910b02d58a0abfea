package drylap.security;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** Where words stand: every column of every table that holds text, asked of the database itself so that no later table is forgotten. */
final class TextPlaces {
    /** What was brought in as it is, and plans: names of sites and crews are the contractor's own, whoever they sound like. */
    private static final Set<String> AS_BROUGHT_IN = Set.of(
            "job_folder",
            "site",
            "facade",
            "opening",
            "crew",
            "shift",
            "travel_leg",
            "forecast",
            "forecast_hour",
            "kept_forecast",
            "kept_normals",
            "labour_row",
            "rule_value",
            "published_visit",
            "plan",
            "plan_forecast",
            "visit",
            "unplanned_task",
            "cover_now",
            "open_window",
            "ledger_line",
            "run_waypoint");

    /** Not words: the migrations, and the claims on background work. */
    private static final Set<String> PASSED_BY =
            Set.of("flyway_schema_history", "scheduled_tasks", "person_taken_away");

    /** @param changes whether names are taken out of it; else it is a key or as it was brought in */
    record Place(String table, String column, boolean list, boolean json, boolean changes) {
        /** The column without the names that go. */
        String without() {
            String quoted = quoted(column);
            if (list)
                return "case when %1$s is null then null else array(select name_taken_out(one) from unnest(%1$s) one) end"
                        .formatted(quoted);
            return json
                    ? "name_taken_out(%1$s::text)::jsonb".formatted(quoted)
                    : "name_taken_out(%s)".formatted(quoted);
        }

        String holdsAName() {
            return "%s is not null and %s is distinct from %s".formatted(quoted(column), without(), quoted(column));
        }
    }

    private TextPlaces() {}

    /** By table. */
    static Map<String, List<Place>> all(DSLContext db) {
        Map<String, List<Place>> all = new LinkedHashMap<>();
        for (Record row : db.fetch("""
                select t.relname, a.attname, format_type(a.atttypid, null),
                    exists (select from pg_index i where i.indrelid = t.oid and i.indisunique and a.attnum = any(i.indkey))
                    or exists (select from pg_constraint c where c.conrelid = t.oid and a.attnum = any(c.conkey)
                        and (c.contype in ('p', 'u', 'f') or c.contype = 'c' and pg_get_constraintdef(c.oid) like '%ARRAY[%'))
                from pg_class t join pg_attribute a on a.attrelid = t.oid
                where t.relnamespace = 'public'::regnamespace and t.relkind = 'r' and a.attnum > 0 and not a.attisdropped
                    and a.attgenerated = '' and format_type(a.atttypid, null) in ('text', 'text[]', 'jsonb', 'character varying')
                order by t.relname, a.attnum""")) {
            String table = row.get(0, String.class);
            if (!PASSED_BY.contains(table))
                all.computeIfAbsent(table, _ -> new ArrayList<>()).add(place(table, row));
        }
        return all;
    }

    private static Place place(String table, Record row) {
        String type = row.get(2, String.class);
        boolean key = row.get(3, Boolean.class);
        return new Place(
                table,
                row.get(1, String.class),
                type.endsWith("[]"),
                type.equals("jsonb"),
                !key && !AS_BROUGHT_IN.contains(table));
    }

    /** Tables in which rows say by number whose they are and by name who that is. */
    static List<String> ofPeople(DSLContext db) {
        return db.fetch("""
                        select t.relname from pg_class t
                        join pg_attribute i on i.attrelid = t.oid and i.attname = 'person_id'
                        join pg_attribute n on n.attrelid = t.oid and n.attname = 'person'
                        where t.relnamespace = 'public'::regnamespace and t.relkind = 'r' order by 1""").getValues(0, String.class);
    }

    static String quoted(String name) {
        return DSL.using(org.jooq.SQLDialect.POSTGRES).render(DSL.quotedName(name));
    }
}
