package drylap.platform;

import org.jspecify.annotations.Nullable;

/**
 * Whose jobs take turns with others'.
 *
 * @param name who asks, such as a person's number; null for what nobody asked for
 * @param about what for, such as a folder
 */
public record Asker(@Nullable String name, String about) {
    /** What the program does by itself about something. */
    public static Asker nobody(String about) {
        return new Asker(null, about);
    }
}
