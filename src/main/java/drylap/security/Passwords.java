package drylap.security;

import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Objects;
import java.util.Optional;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

/** Passwords are kept as bcrypt hashes, which read 72 bytes at most. */
public final class Passwords {
    public static final int SHORTEST = 12;
    private static final int LONGEST_BYTES = 72;
    private static final int COST = 11;
    private static final String LETTERS = "abcdefghijkmnpqrstuvwxyz23456789";
    private static final int RANDOM_LENGTH = 20;

    private static final BCryptPasswordEncoder BCRYPT = new BCryptPasswordEncoder(COST);
    /** Compared where nobody has the name, so that the answer takes as long. */
    private static final String OF_NOBODY = Objects.requireNonNull(BCRYPT.encode(random()));

    private Passwords() {}

    /**
     * What speaks against a new password, in words.
     *
     * @param names of the person, which are tried first by whoever guesses
     */
    public static Optional<Saying> against(String password, String... names) {
        return judge(password, names).against();
    }

    /**
     * How hard a new password is to guess, and what speaks against it.
     *
     * @param names as above
     */
    public static Judged judge(String password, String... names) {
        var length = outOfLength(password);
        if (length.isPresent())
            return Judged.refused(password.length() < SHORTEST ? Strength.TOO_SHORT : Strength.TOO_LONG, length.get());
        return EasyPasswords.against(password, names)
                .map(why -> Judged.refused(Strength.EASY, why))
                .orElseGet(() -> Guessing.judge(password, EasyPasswords.words(names)));
    }

    private static Optional<Saying> outOfLength(String password) {
        if (password.length() < SHORTEST)
            return Optional.of(Saying.of(
                    "the password has {0, plural, one {# character} other {# characters}}; accepted: {1} or more",
                    password.length(), SHORTEST));
        int bytes = password.getBytes(StandardCharsets.UTF_8).length;
        return bytes > LONGEST_BYTES
                ? Optional.of(Saying.of("the password has {0} bytes; accepted: up to {1}", bytes, LONGEST_BYTES))
                : Optional.empty();
    }

    /** @throws IllegalArgumentException where it is too short or too long */
    static String hash(String password) {
        outOfLength(password).ifPresent(words -> {
            throw new Unfit(words);
        });
        return Objects.requireNonNull(BCRYPT.encode(password));
    }

    static boolean matches(String password, Optional<String> hash) {
        boolean tooLong = password.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES;
        return BCRYPT.matches(tooLong ? "" : password, hash.orElse(OF_NOBODY)) && hash.isPresent() && !tooLong;
    }

    static String random() {
        var random = new SecureRandom();
        var password = new StringBuilder();
        while (password.length() < RANDOM_LENGTH) password.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        return password.toString();
    }
}
