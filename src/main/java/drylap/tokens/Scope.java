package drylap.tokens;

import static drylap.security.Operation.*;

import drylap.kernel.Coded;
import drylap.security.Operation;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;

/** What a token lets a program do, as far as its person may. */
public enum Scope implements Coded {
    READ(
            "read",
            "read sites, openings, crews, the published plan and hand-over records",
            EnumSet.of(
                    SEE_OPENINGS,
                    SEE_FOLDERS,
                    SEE_WEEK_SHEET,
                    SEE_OPEN_HOURS,
                    SEE_CREWS,
                    SEE_CREW_DAY,
                    SEE_APRONS,
                    SEE_HANDOFF_RECORD)),
    MARKS("marks", "mark lines of openings", EnumSet.of(MARK_INSTALL, MARK_FOLLOW_ON, UNDO_MARK)),
    HAND_OVER("hand-over", "release, accept and return openings", EnumSet.of(RELEASE, ACCEPT, RETURN)),
    OPENINGS("openings", "add openings and change their design", EnumSet.of(IMPORT_FOLDER)),
    FORECASTS("forecasts", "bring in forecasts of sites", EnumSet.of(CHOOSE_FORECAST));

    private final String code;
    private final String words;
    private final Set<Operation> operations;

    Scope(String code, String words, Set<Operation> operations) {
        this.code = code;
        this.words = words;
        this.operations = Set.copyOf(operations);
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    static Set<Operation> operations(Collection<Scope> scopes) {
        Set<Operation> all = EnumSet.noneOf(Operation.class);
        scopes.forEach(scope -> all.addAll(scope.operations));
        return all;
    }
}
