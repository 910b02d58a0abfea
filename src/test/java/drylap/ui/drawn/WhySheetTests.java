package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.CostDifference;
import drylap.planning.CostDifference.Term;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.Remedy;
import drylap.planning.SmallChange;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import drylap.speech.Speech;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhySheetTests {
    private static final UnplannedTask LEFT =
            new UnplannedTask(new OpeningId("A"), Task.INSTALL, UnplannedReason.NO_DELIVERY, "");
    private static final Plan PLAN = new Plan(
            Instant.EPOCH, Instant.EPOCH, List.of(), List.of(), List.of(), List.of(), new Ledger(List.of(), 0, 0, 0));

    @Test
    void a_change_is_told_with_what_the_plan_then_costs() {
        var more = new CostDifference(
                -1000, 380, List.of(new Term(LedgerTerm.CREW_DAYS, 400), new Term(LedgerTerm.TRAVEL, -20)));
        var found = new Remedy.Found(new SmallChange.EarlierDelivery(new OpeningId("A"), 2), PLAN, more);

        assertThat(WhySheet.remedy(Speech.ENGLISH, new Remedy(LEFT, found, 3)))
                .contains("the window of A is delivered 2 days earlier")
                .contains("costs 380 more")
                .contains("crew-days", "400", "travel", "20")
                .contains("less work is left out");
    }

    @Test
    void where_none_helps_it_says_so_of_those_that_were_tried() {
        assertThat(WhySheet.remedy(Speech.ENGLISH, new Remedy(LEFT, null, 9))).contains("None of the 9 changes tried");
    }
}
