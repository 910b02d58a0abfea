package drylap.security;

import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import drylap.speech.Saying;
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
    public Optional<Saying> problem() {
        if (!signInName.matches("[\\p{L}\\p{N}._@-]{2,80}"))
            return Optional.of(Saying.of(
                    "sign-in name \"{0}\"; accepted: 2 to {1} letters, digits, dots, hyphens, _ or @",
                    signInName, LONGEST));
        if (name.isEmpty() || name.length() > LONGEST)
            return Optional.of(Saying.of("the name has {0} characters; accepted: 1 to {1}", name.length(), LONGEST));
        if (role.inCrew() && crew == null)
            return Optional.of(Saying.of("a person of role {0} works in a crew: name it", Saying.of(role.words())));
        if (!role.inCrew() && crew != null)
            return Optional.of(Saying.of("a person of role {0} works in no crew", Saying.of(role.words())));
        return Optional.empty();
    }
}
