package drylap.windowschedule;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A level as schedules write it: a number from 1, with or without the word for it; common practice, no source. */
final class LevelText {
    static final int HIGHEST = 200;
    static final Pattern SHAPE = Pattern.compile(
            "(?:level|lvl|lev|l|floor|storey|story)?[ .-]*(\\d{1,4})(?:st|nd|rd|th)?(?: (?:level|floor|storey|story))?");

    private LevelText() {}

    /** None where it is no such number, such as the ground floor or level 0. */
    static OptionalInt read(String text) {
        Matcher found = SHAPE.matcher(TypedText.plain(text));
        if (!found.matches()) return OptionalInt.empty();
        int level = Integer.parseInt(found.group(1));
        return level >= 1 && level <= HIGHEST ? OptionalInt.of(level) : OptionalInt.empty();
    }
}
