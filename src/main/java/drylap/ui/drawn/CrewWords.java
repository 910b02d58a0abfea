package drylap.ui.drawn;

import drylap.crews.Crew;
import drylap.speech.Speech;

/** What a crew does, and how many they are where that is told. */
public final class CrewWords {
    private CrewWords() {}

    public static String of(Speech say, Crew crew) {
        return counted(say, say.it(Words.crewOf(crew.trade())), crew);
    }

    /** Adds how many they are. */
    static String counted(Speech say, String words, Crew crew) {
        Integer people = crew.people();
        return people == null ? words : say.it("{0}, {1, plural, one {# person} other {# people}}", words, people);
    }
}
