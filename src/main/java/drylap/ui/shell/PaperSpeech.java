package drylap.ui.shell;

import drylap.kernel.Coded;
import drylap.kernel.Language;
import drylap.security.Person;
import drylap.speech.Speech;
import org.jspecify.annotations.Nullable;

/** In which language a paper is printed: one's own, or another that was asked for, since papers are given to others. */
public final class PaperSpeech {
    private PaperSpeech() {}

    /** @param language code of the one asked for; what is none is taken as none */
    public static Speech of(Person who, @Nullable String language) {
        return new Speech(reader(who, language).reading());
    }

    /** The same person, as they would read in that language. */
    public static Person reader(Person who, @Nullable String language) {
        return language == null
                ? who
                : Coded.parse(Language.class, language)
                        .map(asked -> who.reading(who.reading().in(asked)))
                        .orElse(who);
    }
}
