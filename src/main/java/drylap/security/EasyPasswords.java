package drylap.security;

import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Passwords that whoever guesses tries first: names, words that everybody takes, years, rows of keys, the same letter again and again. */
final class EasyPasswords {
    private static final int LEFT = 6;
    private static final int RUN = 4;
    private static final int SHORTEST_NAME = 3;
    /** From memory: words that stand near the top of every list of passwords that came to light. */
    private static final List<String> WORDS = List.of(
            "drylap",
            "password",
            "passw0rd",
            "passwort",
            "contraseña",
            "contrasena",
            "welcome",
            "bienvenido",
            "letmein",
            "iloveyou",
            "changeme",
            "secret",
            "secreto",
            "admin",
            "administrator",
            "login",
            "master",
            "summer",
            "winter",
            "spring",
            "autumn",
            "verano",
            "invierno",
            "football",
            "baseball",
            "dragon",
            "monkey",
            "sunshine",
            "princess",
            "superman",
            "window",
            "ventana");

    private static final List<String> ROWS = List.of(
            "qwertyuiop",
            "qwertzuiop",
            "azertyuiop",
            "asdfghjkl",
            "zxcvbnm",
            "yxcvbnm",
            "1234567890",
            "abcdefghijklmnopqrstuvwxyz");
    private static final Pattern YEAR = Pattern.compile("(19|20)[0-9]{2}");
    private static final Pattern SAME = Pattern.compile("(.)\\1{2,}");
    private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final List<String> RUNS = runs();

    private EasyPasswords() {}

    private static List<String> runs() {
        List<String> runs = new ArrayList<>();
        for (String row : ROWS)
            for (String way : List.of(row, new StringBuilder(row).reverse().toString()))
                for (int length = way.length(); length >= RUN; length--)
                    for (int from = 0; from + length <= way.length(); from++)
                        runs.add(way.substring(from, from + length));
        runs.sort(Comparator.comparingInt(String::length).reversed());
        return runs;
    }

    /** @param names of the person, in which each word counts */
    static Optional<Saying> against(String password, String... names) {
        String left = password.toLowerCase(Locale.ROOT);
        for (String word : words(names)) left = left.replace(word, "");
        left = YEAR.matcher(left).replaceAll("");
        for (String run : RUNS) left = left.replace(run, "");
        left = SAME.matcher(left).replaceAll("$1");
        return left.length() >= LEFT
                ? Optional.empty()
                : Optional.of(Saying.of(
                        "the password is easy to guess: without names, usual words, years and rows of keys {0, plural, one {# character is} other {# characters are}} left; accepted: {1} or more",
                        left.length(), LEFT));
    }

    /** What counts for nothing in a password, the longest first. */
    static List<String> words(String... names) {
        return Stream.concat(
                        Stream.of(names)
                                .flatMap(name -> NO_LETTER.splitAsStream(name.toLowerCase(Locale.ROOT)))
                                .filter(word -> word.length() >= SHORTEST_NAME),
                        WORDS.stream())
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }
}
