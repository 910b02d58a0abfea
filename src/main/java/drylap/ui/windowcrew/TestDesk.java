package drylap.ui.windowcrew;

import drylap.handoff.HandoffAct.WaterTest;
import drylap.handoff.HandoffRequest;
import drylap.handoff.HandoffResult;
import drylap.handoff.Inspections;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.OpeningStates;
import drylap.security.Person;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Where a tester says what came of spraying an opening. */
@Component
class TestDesk {
    private final OpeningStates states;
    private final Inspections inspections;

    TestDesk(OpeningStates states, Inspections inspections) {
        this.states = states;
        this.inspections = inspections;
    }

    /** What the person looks at while they fill the form in. */
    HandoffRequest begin(Person who, FolderId folder, OpeningId opening) {
        long version = states.of(who, folder, opening).version();
        return new HandoffRequest(UUID.randomUUID(), folder, Map.of(opening, version), "", List.of());
    }

    HandoffResult record(Person who, HandoffRequest begun, WaterTest test, boolean passed, String note) {
        return inspections.test(
                who, new HandoffRequest(begun.key(), begun.folder(), begun.seen(), note, List.of()), test, passed);
    }
}
