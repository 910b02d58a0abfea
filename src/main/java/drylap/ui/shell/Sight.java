package drylap.ui.shell;

import drylap.kernel.Reach;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Role;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Something that is looked at, and everything of a person by which it is decided what of it they see: people with equal sights may be shown one
 * and the same.
 */
public record Sight(Role role, Reach reach, @Nullable Set<Operation> only, Object what) {
    /** @param what equal where the same is looked at */
    public static Sight of(Person who, Object what) {
        return new Sight(who.role(), who.reach(), who.only(), what);
    }
}
