package drylap.security;

import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Someone as an administrator describes them. */
public record NewPerson(
        String signInName,
        String name,
        Role role,
        Reach reach,
        @Nullable CrewId crew) {
    private static final int LONGEST = 80;

    public NewPerson {
        signInName = signInName.strip();
        name = name.strip();
    }

    /** What speaks against it, in words. */
    public Optional<String> problem() {
        if (!signInName.matches("[\\p{L}\\p{N}._@-]{2,80}"))
            return Optional.of("sign-in name \"%s\"; accepted: 2 to %d letters, digits, dots, hyphens, _ or @"
                    .formatted(signInName, LONGEST));
        if (name.isEmpty() || name.length() > LONGEST)
            return Optional.of("the name has %d characters; accepted: 1 to %d".formatted(name.length(), LONGEST));
        if (role.inCrew() && crew == null)
            return Optional.of("a person of role %s works in a crew: name it".formatted(role.words()));
        if (!role.inCrew() && crew != null)
            return Optional.of("a person of role %s works in no crew".formatted(role.words()));
        return Optional.empty();
    }
}
