package drylap.ui.planner;

import drylap.planning.PlanId;
import drylap.risk.OddsRuns;
import drylap.risk.OddsState;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.OddsTable;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** The odds of the plan on the table, for whoever is signed in. */
@Service
final class OddsDesk {
    private final OddsRuns odds;
    private final SignedIn signedIn;

    OddsDesk(OddsRuns odds, SignedIn signedIn) {
        this.odds = odds;
        this.signedIn = signedIn;
    }

    /** A reckoning takes the right at every site of the folder. */
    boolean mayReckon(FolderShown shown) {
        return odds.mayBegin(signedIn.person(), shown.stored().id());
    }

    boolean maySee() {
        return signedIn.find().filter(who -> who.may(Operation.SEE_ODDS)).isPresent();
    }

    void begin(FolderShown shown, PlanId plan) {
        odds.begin(signedIn.person(), shown.stored().id(), plan);
    }

    void stop(FolderShown shown, PlanId plan) {
        odds.stop(signedIn.person(), shown.stored().id(), plan);
    }

    Optional<OddsState> state(FolderShown shown, PlanId plan) {
        return odds.state(signedIn.person(), shown.stored().id(), plan);
    }

    /** How many trials are done; nothing where none are under way. */
    Optional<Integer> underWay(PlanId plan) {
        return odds.underWay(signedIn.person(), plan);
    }

    /** Asked when the file is fetched: whoever may no longer see the odds gets none. */
    String file(OddsTable table) {
        signedIn.person().demand(Operation.SEE_ODDS);
        return table.csv();
    }
}
