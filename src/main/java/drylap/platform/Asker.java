package drylap.platform;

import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.kernel.SiteId;
import org.jspecify.annotations.Nullable;

/**
 * Whose jobs take turns with others'.
 *
 * @param name who asks, such as a person's number; null for what nobody asked for
 * @param about what for, such as a folder
 */
public record Asker(@Nullable String name, String about) {
    public static Asker of(PersonId who, FolderId folder) {
        return new Asker("person " + who.value(), about(folder));
    }

    /** What the program does by itself about a folder. */
    public static Asker nobody(FolderId folder) {
        return new Asker(null, about(folder));
    }

    /** What it does by itself about a site. */
    public static Asker nobody(SiteId site) {
        return new Asker(null, "site " + site.value());
    }

    private static String about(FolderId folder) {
        return "folder " + folder.value();
    }
}
