package drylap.security;

import drylap.kernel.PersonId;
import java.util.List;

/**
 * What taking someone away changes.
 *
 * @param name as it is now
 * @param placeholder what stands in its place
 * @param formerNames other names that they had, which go as well
 * @param changed rows in which a name goes, by table
 * @param stays rows in which the same words stay: keys and what was brought in as a file, by table
 * @param namesakes others of the same name: in their own rows it stays
 */
public record TakingAway(
        PersonId id,
        String name,
        String placeholder,
        List<String> formerNames,
        List<Rows> changed,
        List<Rows> stays,
        int namesakes) {
    public TakingAway {
        formerNames = List.copyOf(formerNames);
        changed = List.copyOf(changed);
        stays = List.copyOf(stays);
    }

    /** @param table as the database names it */
    public record Rows(String table, long rows) {}

    static String placeholder(PersonId id) {
        return "person " + id.value();
    }
}
