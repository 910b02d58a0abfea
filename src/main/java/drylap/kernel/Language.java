package drylap.kernel;

import java.util.Locale;
import java.util.Optional;

/** In which language someone reads screens, papers and calendars. */
public enum Language implements Coded {
    ENGLISH("en", "English", "en-US"),
    /** As it is read in the United States: decimal points, as on the tape measures there. */
    SPANISH("es", "Español", "es-US");

    private final String code;
    private final String ownName;
    private final Locale locale;

    Language(String code, String ownName, String tag) {
        this.code = code;
        this.ownName = ownName;
        locale = Locale.forLanguageTag(tag);
    }

    /** As HTML's {@code lang} has it. */
    @Override
    public String code() {
        return code;
    }

    /** As whoever speaks it calls it. */
    public String ownName() {
        return ownName;
    }

    public Locale locale() {
        return locale;
    }

    /** The one that a browser asks for first, where it is one of ours. */
    public static Optional<Language> of(Locale wanted) {
        return Coded.parse(Language.class, wanted.getLanguage());
    }
}
