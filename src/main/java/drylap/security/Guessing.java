package drylap.security;

import com.nulabinc.zxcvbn.Pattern;
import com.nulabinc.zxcvbn.StandardDictionaries;
import com.nulabinc.zxcvbn.Zxcvbn;
import com.nulabinc.zxcvbn.matchers.Match;
import drylap.speech.Saying;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How many guesses somebody needs who knows leaked and usual passwords, names, words, rows of keys, dates and what people do with them: as
 * zxcvbn reckons it (Wheeler, "zxcvbn: Low-Budget Password Strength Estimation", USENIX Security 2016).
 */
final class Guessing {
    /** Of 72 letters it takes up to a second, of so many a fifth. What the first of them withstand, the whole does. */
    static final int LOOKED_AT = 40;

    /** Guesses, as powers of ten. From so many on zxcvbn gives its best score: they take weeks where a digest was stolen and is slow to try. */
    private static final double HARD = 10;

    private static final double VERY_HARD = 13;
    private static final double NEARLY = 8;
    /** Its lists are read once, with the first password that is judged. */
    private static final Zxcvbn ZXCVBN = new Zxcvbn();

    private Guessing() {}

    /** @param known words that whoever guesses tries first */
    static Judged judge(String password, List<String> known) {
        var measured = ZXCVBN.measure(password.substring(0, Math.min(LOOKED_AT, password.length())), known);
        double powerOfTen = measured.getGuessesLog10();
        if (powerOfTen >= HARD)
            return new Judged(powerOfTen >= VERY_HARD ? Strength.VERY_HARD : Strength.HARD, Optional.empty());
        return Judged.refused(
                powerOfTen >= NEARLY ? Strength.NEARLY : Strength.EASY,
                Saying.of(
                        "the password is easy to guess: {0}; accepted: for instance four words that have nothing to do with each other",
                        why(measured.getSequence())));
    }

    /** By the longest part that was found in a list or by a rule. */
    private static Saying why(List<Match> parts) {
        return parts.stream()
                .filter(part -> part.pattern != Pattern.Bruteforce)
                .max(Comparator.comparingInt(Match::tokenLength))
                .map(Guessing::why)
                .orElseGet(() -> Saying.of("it is too short for what is in it"));
    }

    private static Saying why(Match part) {
        return switch (part.pattern) {
            case Dictionary -> listed(String.valueOf(part.dictionaryName));
            case Spatial -> Saying.of("keys that lie side by side do not count");
            case Repeat -> Saying.of("what is repeated counts once");
            case Sequence -> Saying.of("letters or digits in their order do not count");
            case Date, Regex -> Saying.of("dates and years do not count");
            case Bruteforce -> Saying.of("it is too short for what is in it");
        };
    }

    private static Saying listed(String list) {
        return switch (list) {
            case StandardDictionaries.PASSWORDS ->
                Saying.of("it is a password that came to light or that many have, or holds one");
            case StandardDictionaries.MALE_NAMES, StandardDictionaries.FEMALE_NAMES, StandardDictionaries.SURNAMES ->
                Saying.of("names do not count");
            case "user_inputs" -> Saying.of("names of the person and words that everybody tries do not count");
            default -> Saying.of("one or two usual words are found soon");
        };
    }
}
